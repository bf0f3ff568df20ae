// Asks a mock made from the contract for every answer that the contract can show: whoever builds a client against the
// mock meets real answers, none of them left for a generator to fill in.
import { readFileSync } from "node:fs";
import { load } from "js-yaml";

const [base, file] = process.argv.slice(2);
const contract = load(readFileSync(file, "utf8"));
const SHOWN = ["application/json", "text/csv", "text/plain"];

function resolved(written) {
  if (!written.$ref) return written;
  return written.$ref.slice(2).split("/").reduce((node, name) => node[name], contract);
}

/** The request that the parameters' own examples make. */
function request(path, method, operation) {
  let url = path;
  const query = new URLSearchParams();
  for (const parameter of (operation.parameters ?? []).map(resolved)) {
    if (parameter.in === "path") url = url.replace(`{${parameter.name}}`, encodeURIComponent(parameter.example));
    else if (parameter.in === "query" && parameter.required) query.set(parameter.name, parameter.example);
  }
  const body = Object.values(operation.requestBody?.content?.["application/json"]?.examples ?? {})[0]?.value;
  return {
    url: `${base}${url}?${query}`,
    init: { method: method.toUpperCase(), headers: body ? { "Content-Type": "application/json" } : {}, body: body && JSON.stringify(body) },
  };
}

let asked = 0;
const wrong = [];
for (const [path, methods] of Object.entries(contract.paths)) {
  for (const [method, operation] of Object.entries(methods)) {
    const success = Object.keys(operation.responses).filter((status) => ["200", "201", "204"].includes(status))[0];
    const content = operation.responses[success].content;
    if (!content) {
      asked++;
      const { url, init } = request(path, method, operation);
      const answer = await fetch(url, { ...init, headers: { ...init.headers, Prefer: `code=${success}` } });
      if (String(answer.status) !== success) wrong.push(`${operation.operationId}: ${answer.status}`);
      continue;
    }
    for (const [type, shown] of Object.entries(content)) {
      if (!SHOWN.includes(type)) continue;
      asked++;
      const { url, init } = request(path, method, operation);
      const answer = await fetch(url, { ...init, headers: { ...init.headers, Accept: type, Prefer: `code=${success}` } });
      const text = await answer.text();
      const expected = type === "application/json" ? JSON.stringify(shown.example) : shown.example;
      const got = type === "application/json" && answer.ok ? JSON.stringify(JSON.parse(text)) : text;
      const violations = JSON.parse(answer.headers.get("sl-violations") ?? "[]");
      if (String(answer.status) !== success) wrong.push(`${operation.operationId} ${type}: ${answer.status} ${text.slice(0, 300)}`);
      else if (got !== expected) wrong.push(`${operation.operationId} ${type}: another answer than the example: ${got.slice(0, 200)}`);
      else if (violations.length) wrong.push(`${operation.operationId} ${type}: ${JSON.stringify(violations)}`);
    }
  }
}
wrong.forEach((line) => console.log(`WRONG ${line}`));
console.log(`mock: ${asked - wrong.length} of ${asked} answers as the contract shows them`);
process.exit(wrong.length || asked < 60 ? 1 : 0);
