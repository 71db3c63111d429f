#!/usr/bin/env python3
"""A class handout about one loop: the readings, questions with blanks, and on a page of its own the key with the picture.

    LOOPSTATE_URL=http://localhost:8080 python3 make_handout.py > bench-trainer.html

Every number of the key comes from the service, so the handout of another refrigerant is a change of READINGS. Standard
library only.
"""

import html
import json
import os
import urllib.parse
import urllib.request

URL = os.environ.get("LOOPSTATE_URL", "http://localhost:8080")
TITLE = "The bench trainer: what the gauges say"
READINGS = {
    "refrigerant": "R-134a",
    "suctionPressure": "18 psig",
    "suctionLineTemperature": "35 degF",
    "dischargePressure": "135 psig",
    "dischargeLineTemperature": "160 degF",
    "liquidLinePressure": "133 psig",
    "liquidLineTemperature": "93 degF",
}
LABELS = {
    "refrigerant": "Refrigerant",
    "suctionPressure": "Suction gauge",
    "suctionLineTemperature": "Suction line thermometer",
    "dischargePressure": "Discharge gauge",
    "dischargeLineTemperature": "Discharge line thermometer",
    "liquidLinePressure": "Liquid line gauge",
    "liquidLineTemperature": "Liquid line thermometer",
}
UNITS = {
    "degF": "°F",
    "delta_degF": "°F difference",
    "psig": "psig",
    "psia": "psia",
    "Btu_per_lb": "Btu/lb",
}
QUESTIONS = [
    ("What is the saturation temperature at the suction gauge?", "/evaporating/dewTemperature", 1),
    ("How much superheat does the vapor have in the suction line?", "/superheat", 1),
    ("What is the saturation temperature at the discharge gauge?", "/condensing/dewTemperature", 1),
    ("How much subcooling does the liquid have?", "/subcooling", 1),
    ("What is the pressure ratio? (Absolute pressures!)", "/pressureRatio", 2),
    ("How much work does the compressor do on each pound?", "/performance/compressorWork", 1),
    ("How much heat does each pound take up in the evaporator?", "/performance/refrigeratingEffect", 1),
    ("How much heat has the condenser to give to the air for each pound?", "/performance/heatRejectionPerMass", 1),
    ("What is the isentropic efficiency of the compressor?", "/compression/isentropicEfficiency", 2),
]


def get(**options):
    query = urllib.parse.urlencode({**READINGS, "units": "IP", **options}, quote_via=urllib.parse.quote)
    with urllib.request.urlopen(f"{URL}/v1/cycle-points/readings?{query}", timeout=20) as reply:
        return reply.read().decode()


def at(tree, pointer):
    for name in pointer.split("/")[1:]:
        tree = tree[int(name)] if isinstance(tree, list) else tree[name]
    return tree


def words(value, digits):
    if isinstance(value, dict):
        return f"{value['value']:.{digits}f} {UNITS.get(value['unit'], value['unit'])}"
    return f"{value:.{digits}f}"


def readable(text):
    number, _, unit = text.partition(" ")
    return html.escape(f"{number} {UNITS[unit]}" if unit in UNITS else text)


reply = json.loads(get())
picture = get(format="svg", chart="pressureEnthalpy")
given = "".join(
    f"<tr><th scope=row>{LABELS[name]}<td>{readable(value)}" for name, value in READINGS.items()
)
questions = "".join(f"<li>{html.escape(question)} <span class=blank></span>" for question, _, _ in QUESTIONS)
key = "".join(
    f"<li>{html.escape(question)} <b>{html.escape(words(at(reply, pointer), digits))}</b>"
    for question, pointer, digits in QUESTIONS
)
cautions = "".join(f"<li>{html.escape(caution)}" for caution in reply["cautions"])
source = html.escape(reply["basis"]["equationOfState"]["source"])
print(f"""<!DOCTYPE html>
<html lang=en>
<meta charset=utf-8>
<title>{TITLE}</title>
<style>
body {{ font: 12pt/1.45 serif; max-width: 46em; margin: 2em auto; padding: 0 1em; }}
table {{ border-collapse: collapse; }}
th, td {{ border: 1px solid; padding: .2em .6em; text-align: left; font-weight: normal; }}
svg {{ max-width: 100%; height: auto; }}
li {{ margin: .4em 0; }}
.blank {{ display: inline-block; width: 9em; border-bottom: 1px solid; }}
.key {{ break-before: page; }}
.caution {{ border: 2px solid; padding: .2em 1em; }}
</style>
<h1>{TITLE}</h1>
<p>Harbor Trades College, refrigeration lab. Name: <span class=blank></span> Date: <span class=blank></span>
<section class=caution>
<h2>Before you start</h2>
<ul>{cautions}</ul>
</section>
<h2>What was read</h2>
<table>{given}</table>
<h2>Questions</h2>
<ol>{questions}</ol>
<p>Liquid does not compress. Which of the numbers above tells you that none reaches this compressor, and at what value would
you shut the trainer down?
<section class=key>
<h2>Key</h2>
<ol>{key}</ol>
<h2>The loop</h2>
{picture}
<p>Equation of state: {source}
</section>
</html>""")
