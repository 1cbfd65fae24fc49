// SPDX-License-Identifier: Apache-2.0
#include "demo/demo_houses.h"

namespace wetfront {
namespace {

Pump pump_of(const std::string& house, const std::string& id, const char* name, const char* make_up) {
    Pump pump;
    pump.id = Id{house + "-" + id};
    pump.name = name;
    pump.sump_volume = typed<Volume>("380 gal");
    pump.make_up_flow = typed<VolumeFlow>(make_up);
    pump.sump_area = typed<Area>("28 ft2");
    pump.sump_freeboard = typed<Length>("8 in");
    pump.bleed_flow = typed<VolumeFlow>("4 gpm");
    pump.riser_volume = typed<Volume>("1.5 gal");
    pump.static_lift = typed<Length>("7.5 ft");
    pump.power = typed<Power>("1.1 kW");
    return pump;
}

struct HeaderSize {
    const char* length;
    const char* bore;
};

PadBank bank_of(const std::string& house, const std::string& id, const char* name, const Id& pump,
                PumpEnd end, const HeaderSize& header) {
    PadBank bank;
    bank.id = Id{house + "-" + id};
    bank.name = name;
    bank.pump = pump;
    bank.pump_end = end;
    bank.length = typed<Length>(header.length);
    bank.height = typed<Length>("5 ft");
    bank.thickness = typed<Length>("6 in");
    bank.header_bore = typed<Length>(header.bore);
    bank.outlet_bore = typed<Length>("0.125 in");
    bank.outlet_spacing = typed<Length>("3 in");
    return bank;
}

Timer timer_of(const std::string& house, const std::vector<Pump>& pumps, const char* resolution) {
    Timer timer;
    timer.id = Id{house + "-timer"};
    timer.name = "Pad timer";
    timer.kind = TimerKind::trimmed;
    for (const auto& pump : pumps) {
        timer.pumps.push_back(pump.id);
    }
    timer.resolution = typed<Duration>(resolution);
    timer.period_resolution = typed<Duration>("1 min");
    return timer;
}

House house_of(const Farm& farm, const std::string& id, const char* name, const char* airflow,
               const char* cross_section) {
    House house;
    house.id = Id{id};
    house.farm = farm.id;
    house.name = name;
    house.fan_airflow = typed<VolumeFlow>(airflow);
    house.cross_section = typed<Area>(cross_section);
    house.birds = 24'000.0;
    house.bird_mass = typed<Mass>("7.5 lb");
    house.building_gain = typed<Power>("30 kW");
    house.sensor_lag = typed<Duration>("4 min");
    house.sensors = {{Id{id + "-sensor-1"}, SensorKind::temperature, SensorPlace::in_house},
                     {Id{id + "-sensor-2"}, SensorKind::humidity, SensorPlace::outside}};
    return house;
}

}  // namespace

Farm demo_farm() {
    Farm farm;
    farm.id = Id{"demo-farm"};
    farm.name = "Thimblewick Farm (invented)";
    farm.customer = "Orla Pennywhistle (invented)";
    farm.service_firm = "Drizzle & Daughters Pad Service (invented)";
    farm.elevation = typed<Length>("620 ft");
    farm.design_dry_bulb = typed<Temperature>("98 degF");
    farm.design_wet_bulb = typed<Temperature>("76 degF");
    farm.design_daily_range = typed<TemperatureDifference>("20 degF");
    farm.currency = "USD";
    farm.water_price = typed<WaterPrice>("3.50 /kgal");
    farm.energy_price = typed<EnergyPrice>("0.14 /kWh");
    return farm;
}

House alder(const Farm& farm) {
    auto house = house_of(farm, "demo-alder", "House Alder", "205000 cfm", "360 ft2");
    house.pumps = {pump_of("demo-alder", "pump", "Pump", "14 gpm")};
    house.banks = {
        bank_of("demo-alder", "bank-1", "Bank 1, west", house.pumps[0].id, PumpEnd::right, {"60 ft", "3 in"}),
        bank_of("demo-alder", "bank-2", "Bank 2, east", house.pumps[0].id, PumpEnd::left, {"60 ft", "3 in"})};
    house.timers = {timer_of("demo-alder", house.pumps, "1 s")};
    return house;
}

House birch(const Farm& farm) {
    auto house = house_of(farm, "demo-birch", "House Birch", "272000 cfm", "440 ft2");
    house.pumps = {pump_of("demo-birch", "pump", "Pump", "18 gpm")};
    house.banks = {bank_of("demo-birch", "bank-1", "Bank 1, west", house.pumps[0].id, PumpEnd::right,
                           {"80 ft", "3.5 in"}),
                   bank_of("demo-birch", "bank-2", "Bank 2, east", house.pumps[0].id, PumpEnd::left,
                           {"80 ft", "3.5 in"})};
    house.timers = {timer_of("demo-birch", house.pumps, "5 s")};
    return house;
}

House cedar(const Farm& farm) {
    auto house = house_of(farm, "demo-cedar", "House Cedar", "306000 cfm", "500 ft2");
    house.pumps = {pump_of("demo-cedar", "pump-1", "Pump 1, west", "11 gpm"),
                   pump_of("demo-cedar", "pump-2", "Pump 2, east", "11 gpm")};
    house.banks = {
        bank_of("demo-cedar", "bank-1", "Bank 1, west", house.pumps[0].id, PumpEnd::right, {"90 ft", "3 in"}),
        bank_of("demo-cedar", "bank-2", "Bank 2, east", house.pumps[1].id, PumpEnd::left, {"90 ft", "3 in"})};
    house.timers = {timer_of("demo-cedar", house.pumps, "5 s")};
    house.maintenance = {{Id{"demo-cedar-cleaned"},
                          parse_iso8601("2024-05-06T00:00:00-05:00", "demo").value(),
                          Upkeep::outlets_cleaned,
                          {house.banks[1].id},
                          {},
                          "Header flushed, every outlet brushed."}};
    return house;
}

TimerSettings when_pads_may_run(const Id& timer) {
    TimerSettings settings;
    settings.timer = timer;
    settings.target = typed<Temperature>("78 degF");
    settings.start_temperature = typed<Temperature>("84 degF");
    settings.lowest_house_temperature = typed<Temperature>("76 degF");
    settings.humidity_cut_off = typed<Fraction>("80%");
    settings.pad_hours_from = TimeOfDay{9 * 60};
    settings.pad_hours_to = TimeOfDay{23 * 60 + 30};
    settings.rinse_at = TimeOfDay{9 * 60 + 40};
    return settings;
}

}  // namespace wetfront
