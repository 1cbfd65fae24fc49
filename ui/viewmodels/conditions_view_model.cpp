// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/conditions_view_model.h"

#include <algorithm>

#include "viewmodels/record_form.h"

namespace wetfront::ui {

ConditionsViewModel::ConditionsViewModel(VisitRecord& record, QObject* parent)
    : QObject{parent},
      record_{record},
      air_{new FormModel{record.context().formatter, this}},
      flows_{new FormModel{record.context().formatter, this}},
      water_{new FormModel{record.context().formatter, this}} {
    const auto lines = [this](const std::vector<std::string_view>& keys) {
        return form_lines<Conditions>([this]() -> Conditions& { return record_.visit().conditions; }, keys,
                                      [this] { return record_.save_visit(); });
    };
    air_->set_fields(
        lines({"outside_dry_bulb", "outside_humidity", "behind_pad", "house_temperature", "house_humidity",
               "static_pressure", "face_velocity", "barometer", "bird_age_days"}));
    water_->set_fields(lines({"hardness", "alkalinity", "ph", "conductivity"}));
    build_flows();
    connect(&record_, &VisitRecord::changed, this, [this] {
        air_->refresh();
        water_->refresh();
        if (flows_->count() != static_cast<int>(record_.file().house.pumps.size())) {
            build_flows();
        } else {
            flows_->refresh();
        }
    });
}

PumpFlow& ConditionsViewModel::flow_of(const Id& pump) {
    auto& list = record_.visit().conditions.flows;
    const auto at =
        std::find_if(list.begin(), list.end(), [&](const PumpFlow& flow) { return flow.pump == pump; });
    return at != list.end() ? *at : list.emplace_back(PumpFlow{pump, {}});
}

void ConditionsViewModel::build_flows() {
    std::vector<FormField> all;
    for (const auto& pump : record_.file().house.pumps) {
        for (auto& line : form_lines<PumpFlow>([this, id = pump.id]() -> PumpFlow& { return flow_of(id); },
                                               {"flow"}, [this] { return record_.save_visit(); })) {
            line.title = QString::fromStdString(pump.name);
            all.push_back(std::move(line));
        }
    }
    flows_->set_fields(std::move(all));
}

}  // namespace wetfront::ui
