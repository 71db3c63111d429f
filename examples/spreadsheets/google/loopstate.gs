/**
 * Loopstate in Google Sheets: Extensions > Apps Script, paste, save. The service has to be reachable from the internet; Google calls
 * it from addresses that many share, so give the service keys rather than limits by address.
 */
const SERVICE = 'http://localhost:8080';

/**
 * One value of a calculation.
 *
 * =LOOPSTATE("cycle-points/readings", "superheat", A2:B6) or, where the decimal mark is a comma,
 * =LOOPSTATE("cycle-points/readings"; "superheat"; A2:B6)
 *
 * @param {string} operation path of the calculation below the version
 * @param {string} pick name of the value
 * @param {Array<Array<string>>} inputs two columns: names and values with their units, such as suctionPressure and 42 psig
 * @return {number} the value
 * @customfunction
 */
function LOOPSTATE(operation, pick, inputs) {
  const parameters = inputs.filter((row) => row[1] !== '').map((row) => [row[0], text(row[1])]);
  parameters.push(['format', 'txt'], ['pick', pick]);
  const query = parameters.map((pair) => pair.map(encodeURIComponent).join('=')).join('&');
  const reply = UrlFetchApp.fetch(`${SERVICE}/v1/${operation}?${query}`, { muteHttpExceptions: true });
  if (reply.getResponseCode() !== 200) {
    throw new Error(reasons(JSON.parse(reply.getContentText())));
  }
  return Number(reply.getContentText());
}

/**
 * One value for each line of a logbook, in one call: a cell for each line would soon use up the calls of a day.
 *
 * =LOOPSTATE_LOGBOOK("cycle-points/readings", "superheat", A1:E200)
 *
 * @param {string} operation path of the calculation below the version
 * @param {string} member name of the value in the reply
 * @param {Array<Array<string>>} table a line of names, then a line of values for each calculation
 * @return {Array<Array<number|string>>} a column: the value in inch-pound units, or why there is none
 * @customfunction
 */
function LOOPSTATE_LOGBOOK(operation, member, table) {
  const names = table[0];
  const lines = table.slice(1);
  const filled = (line) => line.some((cell) => cell !== '');
  const rows = lines.filter(filled).map((line) => ({
    request: Object.fromEntries(names.map((name, i) => [name, text(line[i])]).filter((pair) => pair[1] !== '')),
  }));
  const reply = UrlFetchApp.fetch(`${SERVICE}/v1/batch?operation=${operation}&units=IP`, {
    method: 'post',
    contentType: 'application/json',
    payload: JSON.stringify(rows),
    muteHttpExceptions: true,
  });
  const answer = JSON.parse(reply.getContentText());
  if (reply.getResponseCode() !== 200) {
    throw new Error(reasons(answer));
  }
  const cells = answer.items.map((row) => (row.status === 200 ? number(row.reply[member]) : reasons(row.problem)));
  // An empty line keeps its place, so that every value stands beside its readings.
  let next = 0;
  return lines.map((line) => [filled(line) ? cells[next++] : '']);
}

/** A number in a cell has no locale; JavaScript writes it with a point. */
function text(cell) {
  return typeof cell === 'number' ? String(cell) : cell.trim();
}

function number(value) {
  return value === undefined ? 'not in this reply' : typeof value === 'object' ? value.value : value;
}

function reasons(problem) {
  const faults = problem.errors || [];
  return faults.length ? faults.map((fault) => fault.detail + (fault.hint ? ` ${fault.hint}` : '')).join(' ') : problem.detail;
}
