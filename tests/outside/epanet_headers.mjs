// SPDX-License-Identifier: Apache-2.0
// Headers with holes by EPANET, at a fixed inlet head and on a pump: each hole an emitter, each stretch between two holes a
// pipe. EPANET counts no velocity head, no loss at the holes and no recovery past them, and takes its friction factor from
// Swamee and Jain, from Dunlop's cubic between Reynolds numbers 2000 and 4000, and from Hagen and Poiseuille below.
import { outsidePackage, writeTable } from "./outside.mjs";

const { exported: epanet, version } = outsidePackage("epanet-js");
const { AnalysisStatistic, LinkProperty, NodeProperty } = epanet;

const gravity = 9.80665;  // m/s2, of the emitters; EPANET's own friction counts with 32.2 ft/s2 = 9.8146 m/s2
const viscosity = 1.0034e-6;  // m2/s, water at 20 degC
const wantedOfEach = 40;

// mulberry32, public domain: the same headers on every machine.
let state = 20;
function uniform(low, high) {
  state = (state + 0x6d2b79f5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return low + (((t ^ (t >>> 14)) >>> 0) / 4294967296) * (high - low);
}
const rounded = (value, digits) => Number(value.toFixed(digits));
const oneOf = (list) => list[Math.floor(uniform(0, list.length))];

function drawHeader(mode) {
  const spacing = rounded(uniform(0.05, 0.6), 3);
  const outlets = Math.floor(uniform(6, 40) / spacing);
  // The pipe goes on for part of a spacing behind the last hole, so that nobody's rounding adds one or takes one away.
  const length = rounded((outlets + uniform(0.2, 0.8)) * spacing, 3);
  const header = {
    mode, outlets, spacing, length,
    bore: rounded(uniform(25, 80), 1),
    roughness: oneOf([0.0015, 0.007, 0.045, 0.15]),
    outletBore: rounded(uniform(2.5, 7), 2),
    discharge: rounded(uniform(0.6, 0.85), 3),
    rise: uniform(0, 1) < 0.5 ? 0 : rounded(uniform(-0.01, 0.01) * length, 3),
    inletHead: rounded(uniform(0.3, 3), 3),
    lift: 0, supplyLength: 0, supplyBore: 0, pump: [],
  };
  if (mode === "pump") {
    const design = outlets * emitter(header) * Math.sqrt(header.inletHead) * uniform(0.3, 0.9);
    header.lift = rounded(uniform(0.2, 2.5), 3);
    header.supplyLength = rounded(uniform(2, 15), 2);
    header.supplyBore = rounded(header.bore * uniform(0.7, 1.2), 1);
    const shutOff = (header.lift + header.inletHead) * uniform(1.4, 2.5);
    const drop = uniform(0.3, 0.7);
    // Five points: EPANET would lay a power law through one or three that start at no flow.
    header.pump = [0, 0.4, 0.8, 1.3, 1.9].map((share) => ({
      flow: rounded(share * design, 6),
      head: rounded(shutOff * (1 - drop * (share / 1.9) ** 1.8), 3),
    }));
  }
  return header;
}

// Flow of one outlet at a head of 1 m, m3/s: Cd A sqrt(2 g).
function emitter(header) {
  return header.discharge * (Math.PI / 4) * (header.outletBore / 1000) ** 2 * Math.sqrt(2 * gravity);
}

function network(header) {
  const litres = (flow) => flow * 1000;
  const pumped = header.mode === "pump";
  const junctions = [`inlet ${header.lift} 0`];
  const emitters = [];
  const pipes = [];
  for (let i = 1; i <= header.outlets; ++i) {
    const elevation = header.lift + (header.rise * (i * header.spacing)) / header.length;
    junctions.push(`o${i} ${elevation} 0`);
    emitters.push(`o${i} ${litres(emitter(header))}`);
    pipes.push(`p${i} ${i === 1 ? "inlet" : `o${i - 1}`} o${i} ${header.spacing} ${header.bore} ${header.roughness} 0 Open`);
  }
  if (pumped) {
    junctions.push("delivery 0 0");
    pipes.push(`supply delivery inlet ${header.supplyLength} ${header.supplyBore} ${header.roughness} 0 Open`);
  }
  // At a fixed head the inlet is itself the reservoir.
  const reservoir = pumped ? "sump 0" : `inlet ${header.inletHead}`;
  return [
    "[JUNCTIONS]", ...(pumped ? junctions : junctions.slice(1)),
    "[RESERVOIRS]", reservoir,
    "[PIPES]", ...pipes,
    ...(pumped ? ["[PUMPS]", "pump sump delivery HEAD curve", "[CURVES]",
      ...header.pump.map((point) => `curve ${litres(point.flow)} ${point.head}`)] : []),
    "[EMITTERS]", ...emitters,
    "[OPTIONS]", "Units LPS", "Headloss D-W", `Viscosity ${viscosity}`, "Emitter Exponent 0.5", "Trials 500", "Accuracy 1e-8",
    "Unbalanced Stop", "[TIMES]", "Duration 0", "[END]",
  ].join("\n");
}

const workspace = new epanet.Workspace();
await workspace.loadModule();

/** What EPANET makes of the header; nothing where it warns, or where an outlet has no head. */
function solve(header) {
  const model = new epanet.Project(workspace);
  // The package tells of warnings (not converged, pump beyond its curve, no head somewhere) in this way only.
  const warn = console.warn;
  let warnings = 0;
  console.warn = () => ++warnings;
  try {
    workspace.writeFile("header.inp", network(header));
    model.open("header.inp", "header.rpt", "header.out");
    model.openH();
    model.initH(0);
    model.runH();
    const value = (node, property) => model.getNodeValue(model.getNodeIndex(node), property);
    const numbers = Array.from({ length: header.outlets }, (_, i) => `o${i + 1}`);
    const heads = numbers.map((outlet) => value(outlet, NodeProperty.Pressure));
    const flows = numbers.map((outlet) => value(outlet, NodeProperty.Demand) / 1000);
    const intoHeader = model.getLinkValue(model.getLinkIndex("p1"), LinkProperty.Flow) / 1000;
    const inletHead = header.mode === "pump" ? value("inlet", NodeProperty.Pressure) : header.inletHead;
    const relativeError = model.getStatistic(AnalysisStatistic.RelativeError);
    model.closeH();
    model.close();
    return warnings > 0 || relativeError > 1e-8 || heads.some((head) => head <= 0)
      ? undefined
      : { heads, flows, flow: intoHeader, inletHead };
  } finally {
    console.warn = warn;
  }
}

function isInteresting(header, result) {
  const climb = (header.rise * header.outlets * header.spacing) / header.length;
  const lost = result.inletHead - result.heads.at(-1) - climb;
  const share = lost / result.inletHead;
  return share > 0.02 && share < 0.8;
}

const rows = [];
let drawn = 0;
for (const mode of ["head", "pump"]) {
  for (let found = 0; found < wantedOfEach; ++drawn) {
    if (drawn > 5000) {
      throw new Error(`only ${rows.length} headers after ${drawn} draws`);
    }
    const header = drawHeader(mode);
    const result = solve(header);
    if (result === undefined || !isInteresting(header, result)) {
      continue;
    }
    const sum = result.flows.reduce((total, flow) => total + flow, 0);
    if (Math.abs(sum / result.flow - 1) > 1e-6) {
      throw new Error(`EPANET's outlets give ${sum} of ${result.flow} m3/s`);
    }
    ++found;
    rows.push([
      `${mode}-${found}`, header.outlets, header.length, header.bore, header.roughness, header.outletBore, header.spacing,
      header.discharge, header.rise, mode, result.inletHead, header.lift, header.supplyLength, header.supplyBore,
      header.pump.map((point) => `${point.flow}:${point.head}`).join(";"),
      result.flow, result.flows[0], result.flows.at(-1), result.heads[0], result.heads.at(-1),
    ]);
  }
}

const engine = [1e4, 1e2, 1].map((place) => Math.floor(workspace.version / place) % 100).join(".");
writeTable(
  [
    `EPANET ${engine} (epanet-js ${version} from npm): Darcy-Weisbach, water of ${viscosity} m2/s; ${drawn} headers drawn.`,
    "Heads are gauge heads above the outlet, of the inlet above the inlet. Mode head: the inlet head is given. Mode pump: it is",
    "EPANET's answer; pump_points are flow:head in m3/s and m with straight lines between; lift is of the inlet above the sump;",
    "the supply pipe is as rough as the header. The first outlet is one spacing from the inlet.",
  ],
  ["id", "outlets", "length_m", "bore_mm", "roughness_mm", "outlet_bore_mm", "spacing_m", "discharge_coefficient", "rise_m", "mode",
    "inlet_head_m", "lift_m", "supply_length_m", "supply_bore_mm", "pump_points", "flow_m3_per_s", "first_outlet_m3_per_s",
    "last_outlet_m3_per_s", "first_head_m", "last_head_m"],
  rows,
);
