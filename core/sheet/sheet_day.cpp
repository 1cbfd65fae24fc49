// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "day/day_words.h"
#include "day/design_weather.h"
#include "day/simulate.h"
#include "day/visit_day.h"
#include "sheet/blocks.h"

namespace wetfront {
namespace {

/// The days that are known, found and advised first, or what they lack.
struct Days {
    std::vector<Message> names;
    std::vector<DayTotals> totals;
    std::vector<Message> missing;
    std::vector<Message> assumed;
};

/// One way to run the timers, and what it is called.
struct NamedWay {
    Message name;
    const WayToRun& way;
    bool needed;  ///< without it there is nothing to compare
};

Days days_of(const VisitDay& day, const Weather& weather) {
    Days days;
    auto simulator = DaySimulator::of(*day.house, weather);
    if (!simulator) {
        days.missing.push_back(verbatim(simulator.error().text()));
        return days;
    }
    DayResult result;
    for (const auto& [name, way, needed] :
         {NamedWay{WF_TEXT("found"), day.found, true}, NamedWay{WF_TEXT("advised"), day.advised, true},
          NamedWay{WF_TEXT("left"), day.left, false}}) {
        if (!way.plans) {
            if (needed) {
                days.missing.insert(days.missing.end(), way.missing.begin(), way.missing.end());
            }
        } else if (const auto run = simulator.value().run(*way.plans, result); !run) {
            days.missing.push_back(verbatim(run.error().text()));
        } else {
            days.names.push_back(name);
            days.totals.push_back(result.totals);
            days.assumed.insert(days.assumed.end(), way.assumed.begin(), way.assumed.end());
        }
    }
    return days;
}

Message listed(const std::vector<Message>& all) {
    Message list = all.front();
    for (std::size_t i = 1; i < all.size(); ++i) {
        list = {WF_TEXT("%1; %2"), {std::move(list), all[i]}};
    }
    return list;
}

}  // namespace

void add_day(Blocks& blocks, const SheetInputs& inputs) {
    blocks.emplace_back(SheetHeading{WF_TEXT("The hottest day, worked out hour by hour")});
    auto day = visit_day(inputs.file, inputs.advice);
    const auto weather = design_weather_of(inputs.file, inputs.advice);
    if (!weather) {
        day.missing.push_back(verbatim(weather.error().text()));
    }
    const auto days = day.house && weather ? days_of(day, weather.value()) : Days{{}, {}, day.missing, {}};
    if (!days.missing.empty()) {
        blocks.emplace_back(
            SheetParagraph{Message{WF_TEXT("Not worked out, as it lacks: %1"), {listed(days.missing)}}});
        return;
    }
    const auto words = compared(days.totals, inputs.file.farm.currency);
    blocks.emplace_back(SheetParagraph{words.sentence, true});
    SheetTable table;
    table.columns = {WF_TEXT("On that day")};
    table.columns.insert(table.columns.end(), days.names.begin(), days.names.end());
    table.widths.assign(table.columns.size(), 0.6 / static_cast<double>(days.names.size()));
    table.widths.front() = 0.4;
    for (const auto& line : words.rows) {
        std::vector<Message> texts{line.what};
        texts.insert(texts.end(), line.values.begin(), line.values.end());
        table.rows.push_back(row(std::move(texts)));
    }
    blocks.emplace_back(std::move(table));
    auto assumed = day.assumed;
    for (const auto& each : days.assumed) {
        if (std::ranges::find(assumed, each) == assumed.end()) {
            assumed.push_back(each);
        }
    }
    if (!assumed.empty()) {
        blocks.emplace_back(SheetParagraph{Message{WF_TEXT("Assumed: %1"), {listed(assumed)}}});
    }
}

}  // namespace wetfront
