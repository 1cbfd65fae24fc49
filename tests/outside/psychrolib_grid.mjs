// SPDX-License-Identifier: Apache-2.0
// Moist air by psychrolib over a grid of dry bulb, relative humidity and pressure.
import { outsidePackage, writeTable } from "./outside.mjs";

const { exported: psychrolib, version } = outsidePackage("psychrolib");
psychrolib.SetUnitSystem(psychrolib.SI);

const rows = [];
for (let dryBulb = -40; dryBulb <= 80; dryBulb += 2.5) {
  for (let percent = 2; percent <= 100; percent += 2) {
    for (let pressure = 60000; pressure <= 110000; pressure += 6250) {
      const humidity = percent / 100;
      const [ratio, wetBulb, dewPoint, , enthalpy, volume] =
        psychrolib.CalcPsychrometricsFromRelHum(dryBulb, humidity, pressure);
      const density = psychrolib.GetMoistAirDensity(dryBulb, ratio, pressure);
      rows.push([dryBulb, humidity, pressure, wetBulb, dewPoint, ratio, enthalpy, volume, density]);
    }
  }
}

writeTable(
  [
    `psychrolib ${version} (npm), SI, CalcPsychrometricsFromRelHum and GetMoistAirDensity. Wet bulb and dew point are found by`,
    "iteration and stop within 0.001 degC; the rest is closed form. Ratio, enthalpy and volume are per kg of dry air.",
  ],
  ["dry_bulb_degC", "relative_humidity", "pressure_Pa", "wet_bulb_degC", "dew_point_degC", "humidity_ratio",
    "enthalpy_J_per_kg", "specific_volume_m3_per_kg", "density_kg_per_m3"],
  rows,
);
