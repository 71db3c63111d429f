#!/usr/bin/env python3
"""A dispatch system posts a work order with readings; back goes what its screen shows the dispatcher.

    LOOPSTATE_URL=http://localhost:8080 PORT=8090 python3 dispatch_webhook.py

A sketch to start from: it listens on this machine only and knows no users. Standard library only.
"""

import json
import os
import urllib.error
import urllib.request
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

URL = os.environ.get("LOOPSTATE_URL", "http://localhost:8080")
LARGEST = 64 * 1024
ORDER = {"note": 0, "caution": 1, "danger": 2}


def findings(order):
    """Status and answer for a work order."""
    body = json.dumps({**order["readings"], "units": order.get("units", "IP")}).encode()
    call = urllib.request.Request(
        f"{URL}/v1/cycle-points/readings", data=body, headers={"Content-Type": "application/json"}
    )
    try:
        with urllib.request.urlopen(call, timeout=10) as reply:
            found = json.load(reply)
    except urllib.error.HTTPError as refusal:
        if refusal.code not in (400, 422):
            raise
        # The technician learns which reading to take again.
        problem = json.load(refusal)
        faults = [
            {"reading": fault.get("pointer", "#"), "why": fault["detail"], "hint": fault.get("hint")}
            for fault in problem.get("errors", [])
        ]
        return 422, {"order": order["id"], "title": problem["title"], "faults": faults}
    warnings = sorted(found["warnings"], key=lambda warning: -ORDER[warning["severity"]])
    return 200, {
        "order": order["id"],
        "urgent": any(warning["severity"] == "danger" for warning in warnings),
        "superheat": round(found["superheat"]["value"], 1),
        "unit": found["superheat"]["unit"],
        "warnings": [warning["message"] for warning in warnings],
        "caution": found["cautions"][1],
    }


class Webhook(BaseHTTPRequestHandler):
    def do_POST(self):
        length = int(self.headers.get("Content-Length", "0"))
        if not 0 < length <= LARGEST:
            self.answer(413, {"title": "A work order is some hundred bytes of JSON."})
            return
        try:
            order = json.loads(self.rfile.read(length))
            status, answer = findings(order)
        except (ValueError, KeyError, TypeError):
            status, answer = 400, {"title": 'A work order looks like {"id": ..., "readings": {...}}.'}
        except urllib.error.URLError:
            status, answer = 502, {"title": "The service for calculations does not answer."}
        self.answer(status, answer)

    def answer(self, status, answer):
        body = json.dumps(answer, indent=2).encode()
        self.send_response(status)
        self.send_header("Content-Type", "application/json")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)

    def log_message(self, *arguments):
        pass


server = ThreadingHTTPServer(("127.0.0.1", int(os.environ.get("PORT", "8090"))), Webhook)
print(f"listening on {server.server_port}", flush=True)
server.serve_forever()
