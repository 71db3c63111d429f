#!/usr/bin/env python3
"""Readings of a bench trainer in, what they say out. Nothing but the standard library."""

import json
import os
import sys
import time
import urllib.error
import urllib.request

URL = os.environ.get("LOOPSTATE_URL", "http://localhost:8080")
READINGS = {
    "refrigerant": "R-134a",
    "suctionPressure": "18 psig",
    "suctionLineTemperature": "35 degF",
    "dischargePressure": "135 psig",
    "dischargeLineTemperature": "160 degF",
    "liquidLinePressure": "133 psig",
    "liquidLineTemperature": "93 degF",
    "units": "IP",
}


def ask(operation, request, tries=5):
    """The reply to a request. A busy service says when to come again."""
    body = json.dumps(request).encode()
    for left in range(tries - 1, -1, -1):
        call = urllib.request.Request(
            f"{URL}/v1/{operation}", data=body, headers={"Content-Type": "application/json"}
        )
        try:
            with urllib.request.urlopen(call, timeout=10) as reply:
                return json.load(reply)
        except urllib.error.HTTPError as refusal:
            if refusal.code in (429, 503) and left:
                time.sleep(int(refusal.headers.get("Retry-After", "1")))
                continue
            problem = json.load(refusal)
            for fault in problem["errors"]:
                print(fault.get("pointer", "request"), fault["detail"], fault.get("hint", ""), file=sys.stderr)
            raise SystemExit(problem["title"]) from None


def words(quantity):
    return f"{quantity['value']:.1f} {quantity['unit']}"


reply = ask("cycle-points/readings", READINGS)
print(f"{READINGS['refrigerant']}: {words(reply['superheat'])} superheat, {words(reply['subcooling'])} subcooling")
for point in reply["points"]:
    print(f"  {point['name']:<28}{words(point['temperature']):>14}{words(point['specificEnthalpy']):>20}  {point['phase']}")
print(f"heat to reject: {words(reply['performance']['heatRejectionPerMass'])}")
for warning in reply["warnings"]:
    print(f"{warning['severity']}: {warning['message']}")
for caution in reply["cautions"][:2]:
    print(f"! {caution}")
