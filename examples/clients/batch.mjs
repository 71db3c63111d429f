// Two hundred design cycles in one request; answers are read row by row as they come. Node 18 or later, nothing to install.
const url = process.env.LOOPSTATE_URL ?? "http://localhost:8080";

function* rows() {
  for (let i = 0; i < 200; i++) {
    yield JSON.stringify({
      id: `condensing at ${35 + i / 20} degC`,
      operation: "cycle-points/design",
      request: {
        refrigerant: "R-290",
        evaporating: { temperature: "-10 degC" },
        condensing: { temperature: `${35 + i / 20} degC` },
        superheat: "6 K",
        subcooling: "4 K",
        isentropicEfficiency: 0.7,
      },
    }) + "\n";
  }
}

const reply = await fetch(`${url}/v1/batch`, {
  method: "POST",
  headers: { "Content-Type": "application/x-ndjson" },
  body: [...rows()].join(""),
});
if (!reply.ok) {
  console.error(await reply.text());
  process.exit(1);
}

let rest = "";
let best = { cop: 0 };
let summary;
for await (const chunk of reply.body.pipeThrough(new TextDecoderStream())) {
  const lines = (rest + chunk).split("\n");
  rest = lines.pop();
  for (const line of lines) {
    const row = JSON.parse(line);
    if (row.summary) {
      summary = row.summary;
    } else if (row.status === 200 && row.reply.performance.coefficientOfPerformance > best.cop) {
      best = { id: row.id, cop: row.reply.performance.coefficientOfPerformance };
    }
  }
}
console.log(`best of ${summary.succeeded}: ${best.id}, COP ${best.cop.toFixed(3)}`);
