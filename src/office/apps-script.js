'use strict';
// Runs a function of an Apps Script file with the calls that Google offers replaced by curl.
// usage: node apps-script.js FILE SERVICE FUNCTION ARGUMENTS-AS-JSON; prints the result as JSON, or {"error": message}.
const { execFileSync } = require('node:child_process');
const { readFileSync } = require('node:fs');
const vm = require('node:vm');

const [file, service, name, input] = process.argv.slice(2);

const fetch = (url, options = {}) => {
  const send = options.payload === undefined ? [] : ['-X', 'POST', '-H', `Content-Type: ${options.contentType}`, '--data-binary', '@-'];
  const output = execFileSync('curl', ['-s', '-w', '\n%{http_code}', ...send, url], { input: options.payload, encoding: 'utf8' });
  const end = output.lastIndexOf('\n');
  return { getResponseCode: () => Number(output.slice(end + 1)), getContentText: () => output.slice(0, end) };
};

const source = readFileSync(file, 'utf8').replace('http://localhost:8080', service);
const context = vm.createContext({ UrlFetchApp: { fetch } });
vm.runInContext(source, context);
try {
  context.input = input;
  console.log(JSON.stringify(vm.runInContext(`${name}(...JSON.parse(input))`, context)));
} catch (error) {
  console.log(JSON.stringify({ error: error.message }));
}
