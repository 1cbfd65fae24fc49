// SPDX-License-Identifier: Apache-2.0
#include "day/day_words.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "base/numbers.h"
#include "units/quantity_text.h"

namespace wetfront {
namespace {

constexpr double same_house_k = 0.25;
constexpr double same_pumping = 0.02;
constexpr double water_kg_per_m3 = 1000.0;

Message shown(const AnyQuantity& quantity) {
    return {"%1", {quantity}};
}

/// With its sign; long times are read in hours only where they are above 0.
Message change_of(AnyQuantity by) {
    const char* sign = by.si < 0.0 ? "\u2212%1" : by.si > 0.0 ? "+%1" : "%1";
    by.si = std::abs(by.si);
    return {sign, {by}};
}

/// Nobody needs the seconds of a day.
AnyQuantity time_of(Duration time) {
    return any(seconds(60.0 * std::round(in_seconds(time) / 60.0)));
}

AnyQuantity volume_of(Mass water) {
    return any(from_si<Volume>(in_si(water) / water_kg_per_m3), Scale::coarse);
}

std::string money(double amount, const std::string& currency) {
    return print_number(amount, 2) + (currency.empty() ? "" : " " + currency);
}

/// A number's text with its sign in front.
Message signed_text(double value, const std::string& of_its_size) {
    return verbatim((value < 0.0 ? "\u2212" : value > 0.0 ? "+" : "") + of_its_size);
}

class Table {
public:
    explicit Table(std::span<const DayTotals> all) : all_{all} {}

    /// A quantity whose difference is of the same kind.
    void add(Message what, const std::function<AnyQuantity(const DayTotals&)>& of) {
        auto difference = of(all_[1]);
        difference.si -= of(all_[0]).si;
        add(
            std::move(what), [&](const DayTotals& totals) { return shown(of(totals)); },
            change_of(difference));
    }
    void add_number(Message what, const std::function<double(const DayTotals&)>& of, int decimals) {
        const auto text = [&](double value) { return print_number(value, decimals); };
        const double difference = of(all_[1]) - of(all_[0]);
        add(
            std::move(what), [&](const DayTotals& totals) { return verbatim(text(of(totals))); },
            signed_text(difference, text(std::abs(difference))));
    }
    template <class Words>
    void add(Message what, const Words& words, Message difference) {
        DayComparison::Row row{std::move(what), {}, std::move(difference)};
        for (const auto& totals : all_) {
            row.values.push_back(words(totals));
        }
        rows.push_back(std::move(row));
    }
    template <class Known>
    [[nodiscard]] bool know(const Known& known) const {
        return std::ranges::all_of(all_, known);
    }

    std::vector<DayComparison::Row> rows;

private:
    std::span<const DayTotals> all_;
};

std::optional<double> cost_of(const DayTotals& totals) {
    return totals.energy_cost || totals.water_cost
               ? std::optional{totals.energy_cost.value_or(0.0) + totals.water_cost.value_or(0.0)}
               : std::nullopt;
}

Message cooling_words(const DayTotals& first, const DayTotals& second, const Message& way) {
    const double cooler = in_si(first.hottest_house) - in_si(second.hottest_house);
    const auto by = any(from_si<TemperatureDifference>(std::abs(cooler)));
    const bool less_dry = share_lost(first) - share_lost(second) > 0.01;
    if (cooler > same_house_k) {
        return less_dry
                   ? Message{WF_TEXT("At the hottest the house stays %1 cooler as %2 than as found, because "
                                     "the pads stay wet."),
                             {by, way}}
                   : Message{WF_TEXT("At the hottest the house stays %1 cooler as %2 than as found."),
                             {by, way}};
    }
    if (cooler < -same_house_k) {
        return {WF_TEXT("At the hottest the house gets %1 warmer as %2 than as found."), {by, way}};
    }
    return less_dry ? Message{WF_TEXT("At the hottest the house is as warm either way, but as found the pads "
                                      "dry in between, which scales them.")}
                    : Message{WF_TEXT("The house stays as cool as %1 as it does as found."), {way}};
}

Message pumping_words(const DayTotals& first, const DayTotals& second) {
    const double before = in_si(first.pumped);
    const double after = in_si(second.pumped);
    if (before <= 0.0 || std::abs(after - before) <= same_pumping * before) {
        return WF_TEXT("The pumps lift about as much water.");
    }
    const auto share = any_share(std::round(100.0 * std::abs(after - before) / before) / 100.0);
    return after < before ? Message{WF_TEXT("The pumps lift %1 less water."), {share}}
                          : Message{WF_TEXT("The pumps lift %1 more water."), {share}};
}

}  // namespace

double share_lost(const DayTotals& totals) {
    const double could = totals.lost_to_dry_pad + totals.cooling;
    return could > 0.0 ? totals.lost_to_dry_pad / could : 0.0;
}

DayComparison compared(std::span<const DayTotals> all, const std::string& currency, const Message& way) {
    Table table{all};
    const auto& first = all[0];
    const auto& second = all[1];
    // A difference of two temperatures is no temperature.
    table.add(
        WF_TEXT("House at its hottest"),
        [](const DayTotals& totals) { return shown(any(totals.hottest_house)); },
        change_of(
            any(from_si<TemperatureDifference>(in_si(second.hottest_house) - in_si(first.hottest_house)))));
    table.add(WF_TEXT("Time above the limit of the house"),
              [](const DayTotals& totals) { return time_of(totals.above_house_limit); });
    table.add(WF_TEXT("Cooling lost to dry pads"),
              [](const DayTotals& totals) { return any_share(share_lost(totals)); });
    table.add(WF_TEXT("Time in which litter gets wet"),
              [](const DayTotals& totals) { return time_of(totals.litter_wet); });
    table.add(WF_TEXT("Water pumped"), [](const DayTotals& totals) { return volume_of(totals.pumped); });
    table.add(WF_TEXT("Water evaporated"),
              [](const DayTotals& totals) { return volume_of(totals.evaporated); });
    table.add(WF_TEXT("Water bled off"), [](const DayTotals& totals) { return volume_of(totals.bled); });
    if (table.know([](const DayTotals& totals) { return totals.pump_energy.has_value(); })) {
        table.add(WF_TEXT("Energy of the pumps"),
                  [](const DayTotals& totals) { return any(*totals.pump_energy); });
    }
    table.add_number(
        WF_TEXT("Pump starts"),
        [](const DayTotals& totals) { return static_cast<double>(totals.pump_starts); }, 0);
    table.add_number(
        WF_TEXT("Times that a pad gets wet and dry"),
        [](const DayTotals& totals) { return totals.wet_dry_cycles; }, 1);

    Message sentence{WF_TEXT("%1 %2"), {cooling_words(first, second, way), pumping_words(first, second)}};
    if (table.know([](const DayTotals& totals) { return cost_of(totals).has_value(); })) {
        const double saved = *cost_of(first) - *cost_of(second);
        table.add(
            WF_TEXT("Cost of power and water"),
            [&](const DayTotals& totals) { return verbatim(money(*cost_of(totals), currency)); },
            signed_text(-saved, money(std::abs(saved), currency)));
        if (saved >= 0.01) {
            sentence = {WF_TEXT("%1 That saves %2."),
                        {std::move(sentence), verbatim(money(saved, currency))}};
        }
    }
    return {std::move(table.rows), std::move(sentence)};
}

}  // namespace wetfront
