// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/house_view_model.h"

#include <algorithm>

#include "viewmodels/header_picture.h"
#include "viewmodels/record_form.h"

namespace wetfront::ui {
namespace {

constexpr std::size_t most_pumps = 4;
constexpr std::size_t most_banks = 8;
constexpr std::size_t most_timers = 4;
constexpr std::size_t most_curve_points = 10;
constexpr std::size_t most_outlet_changes = 4;
constexpr std::size_t most_fan_stages = 8;

QString qstring(const Id& id) {
    return QString::fromStdString(id.text);
}

std::string numbered(const QString& word, std::size_t number) {
    return QStringLiteral("%1 %2").arg(word, QString::number(number)).toStdString();
}

Error full(const QString& what, std::size_t most) {
    return bad_input(what.toStdString(), "", "at most " + std::to_string(most));
}

void take_from_timers(House& house, const Id& pump) {
    for (auto& timer : house.timers) {
        std::erase(timer.pumps, pump);
    }
}

// What was done to a part goes with it, but for the other parts that it was done to as well.
void take_from_maintenance(House& house, const Id& part) {
    for (auto& done : house.maintenance) {
        std::erase(done.banks, part);
        if (done.pump == part) {
            done.pump = Id{};
        }
    }
    std::erase_if(house.maintenance,
                  [](const Maintenance& done) { return done.banks.empty() && done.pump.empty(); });
}

}  // namespace

House new_house(Store& store, const Id& farm, const std::string& name) {
    House house;
    house.id = store.new_id();
    house.farm = farm;
    house.name = name;
    Pump pump;
    pump.id = store.new_id();
    pump.name = numbered(HouseViewModel::tr("Pump"), 1);
    PadBank bank;
    bank.id = store.new_id();
    bank.name = numbered(HouseViewModel::tr("Bank"), 1);
    bank.pump = pump.id;
    Timer timer;
    timer.id = store.new_id();
    timer.name = numbered(HouseViewModel::tr("Timer"), 1);
    timer.pumps.push_back(pump.id);
    house.pumps.push_back(std::move(pump));
    house.banks.push_back(std::move(bank));
    house.timers.push_back(std::move(timer));
    return house;
}

HouseViewModel::HouseViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent},
      record_{record},
      farm_{new FormModel{record.context().formatter, this}},
      house_{new FormModel{record.context().formatter, this}},
      day_{new FormModel{record.context().formatter, this}} {
    farm_->set_fields(form_lines<Farm>(
        [this]() -> Farm& { return record_.farm(); },
        {"name", "customer", "service_firm", "elevation", "design_dry_bulb", "design_wet_bulb",
         "design_daily_range"},
        [this]() -> Result<void> {
            const auto& farm = record_.farm();
            if (farm.design_dry_bulb && farm.design_wet_bulb &&
                farm.design_wet_bulb->value() > farm.design_dry_bulb->value()) {
                return bad_input("Design day", farm.design_wet_bulb->text(),
                                 "the wet bulb is at most the temperature, " + farm.design_dry_bulb->text());
            }
            return record_.save_farm();
        }));
    house_->set_fields(form_lines<House>([this]() -> House& { return record_.house(); },
                                         {"name", "fan_airflow", "cross_section"},
                                         [this] { return record_.save_house(); }));
    day_->set_fields(day_lines());
    const auto& formatter = record.context().formatter;
    pumps_ = new PartsModel{
        formatter,
        {[this] { return record_.house().pumps.size(); },
         [this](std::size_t i) { return QString::fromStdString(record_.house().pumps[i].name); },
         [this](std::size_t i) { return pump_lines(i); },
         [this]() -> Result<void> {
             auto& house = record_.house();
             if (house.pumps.size() >= most_pumps) {
                 return full(tr("Pumps"), most_pumps);
             }
             const House before = house;
             Pump pump;
             pump.id = record_.context().store.new_id();
             pump.name = numbered(tr("Pump"), house.pumps.size() + 1);
             if (!house.timers.empty()) {
                 house.timers.front().pumps.push_back(pump.id);
             }
             house.pumps.push_back(std::move(pump));
             return keep_or_restore(before);
         },
         [this](std::size_t i) -> Result<void> {
             auto& house = record_.house();
             const Pump pump = house.pumps[i];
             WF_CHECK(refuse_if_timed(pump.id, {}, pump.name));
             WF_CHECK(refuse_if_measured(pump.id, {}, pump.name));
             for (const auto& bank : house.banks) {
                 if (bank.pump == pump.id) {
                     return bad_input(pump.name, "",
                                      "feeds " + bank.name + ": choose another pump for it first");
                 }
             }
             const House before = house;
             take_from_timers(house, pump.id);
             take_from_maintenance(house, pump.id);
             house.pumps.erase(house.pumps.begin() + static_cast<std::ptrdiff_t>(i));
             return keep_or_restore(before);
         },
         [this](std::size_t i) { return more_pump_lines(i); },
         [this](std::size_t i) { return pump_results(i); }},
        this};
    banks_ = new PartsModel{
        formatter,
        {[this] { return record_.house().banks.size(); },
         [this](std::size_t i) { return QString::fromStdString(record_.house().banks[i].name); },
         [this](std::size_t i) { return bank_lines(i); },
         [this]() -> Result<void> {
             auto& house = record_.house();
             if (house.banks.size() >= most_banks) {
                 return full(tr("Banks"), most_banks);
             }
             if (house.pumps.empty()) {
                 return bad_input(tr("Bank").toStdString(), "", "add a pump first");
             }
             const House before = house;
             // The banks of a house are mostly alike: the new one starts as the last one.
             PadBank bank = house.banks.empty() ? PadBank{} : house.banks.back();
             bank.id = record_.context().store.new_id();
             bank.name = numbered(tr("Bank"), house.banks.size() + 1);
             if (house.pump(bank.pump) == nullptr) {
                 bank.pump = house.pumps.front().id;
             }
             house.banks.push_back(std::move(bank));
             return keep_or_restore(before);
         },
         [this](std::size_t i) -> Result<void> {
             auto& house = record_.house();
             const PadBank bank = house.banks[i];
             WF_CHECK(refuse_if_timed({}, bank.id, bank.name));
             WF_CHECK(refuse_if_measured({}, bank.id, bank.name));
             const House before = house;
             take_from_maintenance(house, bank.id);
             house.banks.erase(house.banks.begin() + static_cast<std::ptrdiff_t>(i));
             return keep_or_restore(before);
         },
         [this](std::size_t i) { return more_bank_lines(i); },
         [this](std::size_t i) { return header_words(record_, record_.house().banks[i]); },
         [this](std::size_t i) { return header_picture(record_, record_.house().banks[i]); }},
        this};
    timers_ = new PartsModel{
        formatter,
        {[this] { return record_.house().timers.size(); },
         [this](std::size_t i) { return QString::fromStdString(record_.house().timers[i].name); },
         [this](std::size_t i) { return timer_lines(i); },
         [this]() -> Result<void> {
             auto& house = record_.house();
             if (house.timers.size() >= most_timers) {
                 return full(tr("Timers"), most_timers);
             }
             const House before = house;
             Timer timer;
             timer.id = record_.context().store.new_id();
             timer.name = numbered(tr("Timer"), house.timers.size() + 1);
             house.timers.push_back(std::move(timer));
             return keep_or_restore(before);
         },
         [this](std::size_t i) -> Result<void> {
             auto& house = record_.house();
             const Timer timer = house.timers[i];
             const auto& visit = record_.file().visit;
             if (visit.found_of(timer.id) != nullptr || visit.left_of(timer.id) != nullptr) {
                 return bad_input(timer.name, "", "has settings in this visit and stays");
             }
             const House before = house;
             house.timers.erase(house.timers.begin() + static_cast<std::ptrdiff_t>(i));
             return keep_or_restore(before);
         },
         {},
         {},
         {},
         [this](std::size_t i) { return template_news(i); },
         [this](std::size_t i) { return take_over_template(i); }},
        this};
    connect(&record_, &VisitRecord::changed, this, [this] {
        farm_->refresh();
        house_->refresh();
        day_->change_fields(day_lines());
        pumps_->refresh();
        banks_->refresh();
        timers_->refresh();
    });
}

Result<void> HouseViewModel::keep_or_restore(const House& before) {
    auto result = record_.save_house();
    if (!result) {
        record_.house() = before;
    }
    return result;
}

Result<std::vector<Visit>> HouseViewModel::all_visits() const {
    const auto& store = record_.context().store;
    const auto& house = record_.file().house.id;
    std::vector<Visit> all;
    WF_TRY(const auto listed, store.visits_of(house));
    for (const auto& summary : listed) {
        WF_TRY(auto visit, store.visit(summary.visit));
        all.push_back(std::move(visit));
    }
    WF_TRY(const auto removed, store.removed());
    for (const auto& record : removed) {
        if (record.kind == RecordKind::visit) {
            WF_TRY(auto visit, store.visit(record.id));
            if (visit.house == house) {
                all.push_back(std::move(visit));
            }
        }
    }
    return all;
}

Result<void> HouseViewModel::refuse_if_timed(const Id& pump, const Id& bank, const std::string& name) const {
    WF_TRY(const auto visits, all_visits());
    for (const auto& visit : visits) {
        if (std::ranges::any_of(visit.marks, [&](const Mark& mark) {
                return (!pump.empty() && mark.pump == pump) || (!bank.empty() && mark.bank == bank);
            })) {
            return bad_input(name, "", "was timed on " + local_date(visit.started) + " and stays");
        }
    }
    return boost::outcome_v2::success();
}

Result<void> HouseViewModel::refuse_if_measured(const Id& pump, const Id& bank,
                                                const std::string& name) const {
    WF_TRY(const auto visits, all_visits());
    for (const auto& visit : visits) {
        if (visit.measured_flow(pump) != nullptr || visit.conditions_at(bank) != nullptr) {
            return bad_input(name, "", "was measured on " + local_date(visit.started) + " and stays");
        }
        if (!bank.empty() && std::ranges::find(visit.photos, bank, &Photo::bank) != visit.photos.end()) {
            return bad_input(name, "", "is on a photo of " + local_date(visit.started) + " and stays");
        }
    }
    return boost::outcome_v2::success();
}

std::vector<FormField> HouseViewModel::day_lines() {
    const auto save = [this] { return record_.save_house(); };
    auto lines = form_lines<House>([this]() -> House& { return record_.house(); },
                                   {"birds", "bird_mass", "building_gain", "sensor_lag"}, save);
    append(lines,
           list_lines<FanStage>([this]() -> std::vector<FanStage>& { return record_.house().fan_stages; },
                                {"above_target", "airflow"}, tr("Fan stage %1"), most_fan_stages, save));
    append(lines, form_lines<Farm>([this]() -> Farm& { return record_.farm(); },
                                   {"currency", "water_price", "energy_price"},
                                   [this] { return record_.save_farm(); }));
    return lines;
}

std::vector<FormField> HouseViewModel::pump_lines(std::size_t row) {
    auto lines = form_lines<Pump>([this, row]() -> Pump& { return record_.house().pumps[row]; },
                                  {"name", "sump_volume", "make_up_flow", "riser_volume"},
                                  [this] { return record_.save_house(); });
    FormField timer;
    timer.type = FormField::Type::choice;
    timer.about = Field{"timer", WF_TEXT("Switched by")};
    for (const auto& choice : record_.house().timers) {
        timer.choices.emplace_back(qstring(choice.id), QString::fromStdString(choice.name));
    }
    timer.entry = [this, row] {
        const auto& house = record_.house();
        for (const auto& choice : house.timers) {
            if (std::find(choice.pumps.begin(), choice.pumps.end(), house.pumps[row].id) !=
                choice.pumps.end()) {
                return qstring(choice.id);
            }
        }
        return QString{};
    };
    timer.set = [this, row](const std::string& id) -> Result<void> {
        auto& house = record_.house();
        const House before = house;
        take_from_timers(house, house.pumps[row].id);
        for (auto& choice : house.timers) {
            if (choice.id.text == id) {
                choice.pumps.push_back(house.pumps[row].id);
            }
        }
        return keep_or_restore(before);
    };
    lines.push_back(std::move(timer));
    return lines;
}

std::vector<FormField> HouseViewModel::more_pump_lines(std::size_t row) {
    const auto save = [this] { return record_.save_house(); };
    auto lines = form_lines<Pump>(
        [this, row]() -> Pump& { return record_.house().pumps[row]; },
        {"sump_area", "sump_freeboard", "bleed_flow", "supply_length", "supply_bore", "static_lift", "power"},
        save);
    append(lines,
           list_lines<PumpCurvePoint>(
               [this, row]() -> std::vector<PumpCurvePoint>& { return record_.house().pumps[row].curve; },
               {"flow", "head"}, tr("Curve point %1"), most_curve_points, save));
    return lines;
}

QStringList HouseViewModel::pump_results(std::size_t row) {
    QStringList words;
    if (const auto* water = record_.water().pump(record_.house().pumps[row].id)) {
        for (const auto& note : water->notes) {
            words.append(record_.context().formatter.text(note));
        }
    }
    return words;
}

std::vector<FormField> HouseViewModel::more_bank_lines(std::size_t row) {
    const auto save = [this] { return record_.save_house(); };
    auto lines = form_lines<PadBank>([this, row]() -> PadBank& { return record_.house().banks[row]; },
                                     {"discharge_coefficient", "clogged_share", "header_rise"}, save);
    append(lines, list_lines<OutletChange>(
                      [this, row]() -> std::vector<OutletChange>& {
                          return record_.house().banks[row].outlet_changes;
                      },
                      {"from", "bore"}, tr("Change %1"), most_outlet_changes, save));
    return lines;
}

std::vector<FormField> HouseViewModel::bank_lines(std::size_t row) {
    const auto bank = [this, row]() -> PadBank& { return record_.house().banks[row]; };
    const auto save = [this] { return record_.save_house(); };
    auto lines = form_lines<PadBank>(
        bank,
        {"name", "pump_end", "length", "height", "thickness", "header_bore", "outlet_bore", "outlet_spacing"},
        save);
    FormField pump;
    pump.type = FormField::Type::choice;
    pump.about = Field{"pump", WF_TEXT("Fed by")};
    for (const auto& choice : record_.house().pumps) {
        pump.choices.emplace_back(qstring(choice.id), QString::fromStdString(choice.name));
    }
    pump.entry = [bank] { return qstring(bank().pump); };
    pump.set = [this, bank](const std::string& id) -> Result<void> {
        WF_CHECK(refuse_if_timed({}, bank().id, bank().name));
        const House before = record_.house();
        bank().pump = Id{id};
        return keep_or_restore(before);
    };
    lines.insert(lines.begin() + 1, std::move(pump));
    return lines;
}

std::vector<FormField> HouseViewModel::timer_lines(std::size_t row) {
    auto lines = form_lines<Timer>([this, row]() -> Timer& { return record_.house().timers[row]; },
                                   {"name", "kind", "resolution", "period_resolution"},
                                   [this] { return record_.save_house(); });
    if (record_.house().timers[row].controller) {
        // What the template says is not typed again; of a step that it lacks there is nothing to say.
        std::erase_if(lines, [](const FormField& line) { return line.kind && line.entry().isEmpty(); });
        for (auto& line : lines) {
            if (std::string_view{line.about.key} != "name") {
                line.fixed = true;
                line.about.why = WF_TEXT("From the template.");
            }
        }
    }
    lines.insert(lines.begin() + 1, template_line(row));
    return lines;
}

FormField HouseViewModel::template_line(std::size_t row) {
    FormField line;
    line.type = FormField::Type::choice;
    line.about = Field{"template_id", WF_TEXT("Setting template")};
    line.choices.emplace_back(QString{}, tr("none"));
    const auto& timer = record_.house().timers[row];
    const auto templates = record_.context().store.setting_templates();
    bool listed = timer.template_id.empty();
    for (const auto& known : templates ? templates.value() : std::vector<SettingTemplate>{}) {
        const bool chosen = known.id == timer.template_id;
        const bool usable = static_cast<bool>(check_template(known, ""));
        // A choice that cannot be made any more stays in sight until another one is made.
        if (usable || chosen) {
            const auto& name = chosen && timer.controller ? timer.controller->name : known.name;
            line.choices.emplace_back(qstring(known.id), QString::fromStdString(name));
            listed = listed || chosen;
        }
    }
    if (!listed) {
        line.choices.emplace_back(
            qstring(timer.template_id),
            timer.controller ? QString::fromStdString(timer.controller->name) : tr("one that is not here"));
    }
    line.entry = [this, row] { return qstring(record_.house().timers[row].template_id); };
    line.set = [this, row](const std::string& id) -> Result<void> {
        const House before = record_.house();
        auto& now = record_.house().timers[row];
        if (id.empty()) {
            forget_controller(now);
        } else if (Id{id} != now.template_id) {
            WF_TRY(const auto chosen, record_.context().store.setting_template(Id{id}));
            WF_CHECK(check_template(chosen, chosen.name));
            choose_controller(now, chosen);
        }
        return keep_or_restore(before);
    };
    return line;
}

std::optional<SettingTemplate> HouseViewModel::edited_since(std::size_t row) const {
    const auto& timer = record_.file().house.timers[row];
    if (!timer.controller || record_.frozen()) {
        return std::nullopt;
    }
    auto now = record_.context().store.setting_template(timer.template_id);
    if (!now || now.value() == *timer.controller || !check_template(now.value(), "")) {
        return std::nullopt;
    }
    return std::move(now).value();
}

QString HouseViewModel::template_news(std::size_t row) const {
    return edited_since(row)
               ? tr("The template was changed after it was chosen here. This timer keeps to it as it was.")
               : QString{};
}

Result<void> HouseViewModel::take_over_template(std::size_t row) {
    const auto now = edited_since(row);
    if (!now) {
        return boost::outcome_v2::success();
    }
    const House before = record_.house();
    choose_controller(record_.house().timers[row], *now);
    return keep_or_restore(before);
}

}  // namespace wetfront::ui
