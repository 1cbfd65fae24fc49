// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <array>
#include <cmath>

#include "base/numbers.h"
#include "sheet/blocks.h"
#include "sheet/words.h"

// What the stopwatch gave: every reading, its means, bank against bank.
namespace wetfront {
namespace {

constexpr std::array all_kinds{TimingKind::fill,    TimingKind::wet_through, TimingKind::run_off,
                               TimingKind::dry_out, TimingKind::wet_off,     TimingKind::wet_return};

const std::optional<TimingResult>& result_of(const BankTimings& bank, TimingKind kind) {
    switch (kind) {
        case TimingKind::fill:
            return bank.fill;
        case TimingKind::wet_through:
            return bank.wet_through;
        case TimingKind::run_off:
            return bank.run_off;
        case TimingKind::dry_out:
            return bank.dry_out;
        case TimingKind::wet_off:
            return bank.wet_off;
        case TimingKind::wet_return:
            return bank.wet_return;
    }
    return bank.fill;
}

/// A wet start is made where a pad can't be dried; a bank without one lacks nothing.
bool asked_of_every_bank(TimingKind kind) {
    return kind != TimingKind::wet_off && kind != TimingKind::wet_return;
}

Message bank_name(const House& house, const Id& id) {
    const auto* bank = house.bank(id);
    return bank == nullptr ? verbatim(id.text) : label_of(house, *bank);
}

Message use_of(const Reading& reading, const Visit& visit) {
    if (!reading.not_used) {
        return reading.stands_out ? Message{WF_TEXT("used, but stands out from the others")}
                                  : Message{WF_TEXT("used")};
    }
    const auto aside = std::ranges::find(visit.set_aside, reading.end_mark, &SetAside::end_mark);
    if (reading.not_used == NotUsed::set_aside && aside != visit.set_aside.end()) {
        return {WF_TEXT("not used: set aside, \"%1\""), {as_written(aside->reason)}};
    }
    return label_of(*reading.not_used);
}

Message fans_of(const Reading& reading) {
    if (!reading.fans_running) {
        return WF_TEXT("not stated");
    }
    return *reading.fans_running ? Message{WF_TEXT("on")} : Message{WF_TEXT("off")};
}

// k belongs to the degrees of freedom cut to a whole number; rounding noise must not cost one. Beyond a
// thousand, k is that of the normal distribution to the digits printed.
Message freedom_of(const TimingResult& result) {
    if (!result.degrees_of_freedom) {
        return WF_TEXT("not limited");
    }
    constexpr int most = 1000;
    if (*result.degrees_of_freedom > most) {
        return {WF_TEXT("over %1"), {most}};
    }
    return {"%1", {static_cast<int>(std::floor(*result.degrees_of_freedom + 1e-9))}};
}

std::vector<SheetTable::Cell> result_row(const Message& bank, Message what, const TimingResult& result) {
    return row({bank,
                std::move(what),
                {"%1", {result.count}},
                shown(any(result.mean)),
                {"± %1", {any(result.expanded)}},
                verbatim(print_fixed(result.coverage_factor, 2)),
                freedom_of(result),
                label_of(result.spread_from)});
}

void add_result_rows(SheetTable& table, const Message& name, const BankTimings& bank) {
    for (const auto kind : all_kinds) {
        if (const auto& result = result_of(bank, kind)) {
            table.rows.push_back(result_row(name, label_of(kind), *result));
        } else if (asked_of_every_bank(kind)) {
            table.rows.push_back(row({name, label_of(kind), "0", not_measured(), "", "", "", ""}));
        }
        if (kind == TimingKind::wet_through && bank.wetting) {
            table.rows.push_back(result_row(name, WF_TEXT("Wet-through less fill"), *bank.wetting));
        }
    }
}

void add_comparison_rows(SheetTable& table, const SheetInputs& inputs, TimingKind kind) {
    std::vector<const BankTimings*> timed;
    for (const auto& bank : inputs.timings.banks) {
        if (result_of(bank, kind)) {
            timed.push_back(&bank);
        }
    }
    if (timed.size() < 2) {
        return;
    }
    const auto* shortest = *std::ranges::min_element(
        timed, {}, [&](const BankTimings* bank) { return in_seconds(result_of(*bank, kind)->mean); });
    for (const auto* bank : timed) {
        if (bank == shortest) {
            continue;
        }
        const auto compared = compare(*result_of(*bank, kind), *result_of(*shortest, kind));
        const auto verdict =
            compared.differs ? Message{WF_TEXT("differs")} : Message{WF_TEXT("same within uncertainty")};
        table.rows.push_back(row({label_of(kind),
                                  bank_name(inputs.file.house, bank->bank),
                                  bank_name(inputs.file.house, shortest->bank),
                                  shown(any(compared.difference)),
                                  {"± %1", {any(compared.expanded)}},
                                  {}}));
        table.rows.back().back() = {verdict, compared.differs};
    }
}

}  // namespace

void add_method(Blocks& blocks, const SheetInputs& inputs) {
    blocks.emplace_back(SheetHeading{WF_TEXT("Method")});
    const auto& readings = inputs.timings.readings;
    if (readings.empty()) {
        blocks.emplace_back(SheetParagraph{WF_TEXT("Nothing was timed."), false});
        return;
    }
    for (const auto kind : all_kinds) {
        if (std::ranges::find(readings, kind, &Reading::kind) != readings.end()) {
            blocks.emplace_back(SheetParagraph{method_of(kind), false});
        }
    }
    const EventUncertainty seeing;
    blocks.emplace_back(SheetParagraph{{WF_TEXT("Timed by hand on this program's stopwatch. Mean of the "
                                                "readings used, ± expanded uncertainty U = k u for "
                                                "95 % (JCGM 100:2008): spread, hand %1 (Am. J. Phys. "
                                                "87(2):110, 2019), seeing a drip or a dry patch %2 "
                                                "(assumed), a start by signal %3 (assumed)."),
                                        {any(seeing.hand), any(seeing.drip_or_patch), any(seeing.by_signal)}},
                                       false});
}

void add_readings(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    blocks.emplace_back(SheetHeading{WF_TEXT("Readings")});
    SheetTable table{{WF_TEXT("Bank"), WF_TEXT("Time"), WF_TEXT("Reading"), WF_TEXT("Pump switched by"),
                      WF_TEXT("Fans"), WF_TEXT("Use")},
                     {},
                     {0.17, 0.18, 0.11, 0.18, 0.09, 0.27}};
    for (const auto& bank : house.banks) {
        for (const auto kind : all_kinds) {
            for (const auto& reading : inputs.timings.readings) {
                if (reading.bank == bank.id && reading.kind == kind) {
                    table.rows.push_back(row({label_of(house, bank),
                                              label_of(kind),
                                              shown(any(reading.value)),
                                              label_of(reading.started_by),
                                              fans_of(reading),
                                              {}}));
                    table.rows.back().back() = {use_of(reading, inputs.file.visit), reading.stands_out};
                }
            }
        }
    }
    if (table.rows.empty()) {
        blocks.emplace_back(SheetParagraph{not_measured(), false});
        return;
    }
    blocks.emplace_back(std::move(table));
}

void add_results(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    blocks.emplace_back(SheetHeading{WF_TEXT("Times of each bank")});
    SheetTable table{
        {WF_TEXT("Bank"), WF_TEXT("Time"), WF_TEXT("Readings used"), WF_TEXT("Mean"), WF_TEXT("U (95 %)"),
         WF_TEXT("k"), WF_TEXT("Degrees of freedom"), WF_TEXT("Spread from")},
        {},
        {0.17, 0.19, 0.10, 0.11, 0.11, 0.07, 0.10, 0.15}};
    for (const auto& bank : house.banks) {
        const auto* timed = inputs.timings.of(bank.id);
        add_result_rows(table, label_of(house, bank), timed != nullptr ? *timed : BankTimings{});
    }
    blocks.emplace_back(std::move(table));
    for (const auto& bank : inputs.timings.banks) {
        if (bank.fans_mixed) {
            blocks.emplace_back(SheetParagraph{{WF_TEXT("%1: wet-through was read with the fans now on, now "
                                                        "off or not stated; it counts as off, which "
                                                        "asks for more water."),
                                                {bank_name(house, bank.bank)}},
                                               false});
        }
    }
}

void add_bank_comparison(Blocks& blocks, const SheetInputs& inputs) {
    blocks.emplace_back(SheetHeading{WF_TEXT("Bank against bank")});
    SheetTable table{{WF_TEXT("Time"), WF_TEXT("Bank"), WF_TEXT("Against the shortest"), WF_TEXT("Longer by"),
                      WF_TEXT("U (95 %)"), WF_TEXT("Verdict")},
                     {},
                     {0.18, 0.20, 0.20, 0.12, 0.12, 0.18}};
    for (const auto kind : all_kinds) {
        if (asked_of_every_bank(kind)) {
            add_comparison_rows(table, inputs, kind);
        }
    }
    if (table.rows.empty()) {
        blocks.emplace_back(
            SheetParagraph{WF_TEXT("No two banks were timed in the same way: nothing to compare."), false});
        return;
    }
    blocks.emplace_back(std::move(table));
}

}  // namespace wetfront
