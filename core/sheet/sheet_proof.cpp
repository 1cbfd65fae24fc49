// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "cycle/proof.h"
#include "sheet/blocks.h"

// What was watched after the settings were left: set, seen, expected, verdict.
namespace wetfront {
namespace {

Message where(const House& house, const ProofLine& line) {
    const auto* bank = house.bank(line.bank);
    const auto* pump = house.pump(line.pump);
    const auto place = bank != nullptr   ? label_of(house, *bank)
                       : pump != nullptr ? label_of(house, *pump)
                                         : not_entered();
    return {WF_TEXT("%1: %2"), {place, label_of(line.what)}};
}

Message yes_or_no(bool answer) {
    return answer ? WF_TEXT("yes") : WF_TEXT("no");
}

bool is_looked_at(const ProofLine& line) {
    return line.what == ProofQuantity::even_drip || line.what == ProofQuantity::dry_patch;
}

bool is_of_timer(const ProofLine& line) {
    return line.what == ProofQuantity::period || line.what == ProofQuantity::on_time;
}

Message set_text(const ProofLine& line) {
    if (!is_of_timer(line)) {
        return "";
    }
    return line.set ? shown(any(*line.set)) : not_entered();
}

Message seen_text(const ProofLine& line) {
    if (is_looked_at(line)) {
        return line.answer ? yes_or_no(*line.answer) : label_of(ProofVerdict::not_watched);
    }
    if (!line.seen) {
        return label_of(ProofVerdict::not_watched);
    }
    return {WF_TEXT("%1 ± %2, runs: %3"), {any(line.seen->mean), any(line.seen->expanded), line.seen->count}};
}

Message expected_text(const ProofLine& line) {
    switch (line.what) {
        case ProofQuantity::even_drip:
            return yes_or_no(true);
        case ProofQuantity::dry_patch:
            return yes_or_no(false);
        case ProofQuantity::period:
        case ProofQuantity::on_time:
            if (line.least && !line.most) {
                return {WF_TEXT("at least %1, within %2"), {any(*line.least), any(line.tolerance)}};
            }
            if (!line.least || !line.most) {
                return not_entered();
            }
            return *line.least == *line.most
                       ? Message{WF_TEXT("%1, within %2"), {any(*line.most), any(line.tolerance)}}
                       : Message{WF_TEXT("%1 to %2, within %3"),
                                 {any(*line.least), any(*line.most), any(line.tolerance)}};
        case ProofQuantity::fill:
        case ProofQuantity::drip_return:
            return line.most && line.expected_expanded
                       ? Message{WF_TEXT("%1 ± %2, at most %3 later"),
                                 {any(*line.most), any(*line.expected_expanded), any(line.tolerance)}}
                       : label_of(ProofVerdict::not_compared);
        case ProofQuantity::drip_before_stop:
            return line.most ? Message{WF_TEXT("before %1"), {any(*line.most)}}
                             : label_of(ProofVerdict::not_compared);
    }
    return {};
}

void add_lines(Blocks& blocks, const House& house, const TimerProof& proof) {
    SheetTable table{{WF_TEXT("Watched"), WF_TEXT("Set"), WF_TEXT("Seen ± U (95 %)"), WF_TEXT("Expected"),
                      WF_TEXT("Verdict")},
                     {},
                     {0.29, 0.10, 0.21, 0.25, 0.15}};
    for (const auto& line : proof.lines) {
        auto cells = row({where(house, line), set_text(line), seen_text(line), expected_text(line),
                          label_of(line.verdict)});
        cells.back().marked = line.verdict == ProofVerdict::fail;
        table.rows.push_back(std::move(cells));
    }
    blocks.emplace_back(std::move(table));
}

void add_rule(Blocks& blocks) {
    const ProofTolerances assumed;
    const auto share = [](double value) { return any(from_si<Fraction>(value)); };
    blocks.emplace_back(SheetParagraph{proof_decision_rule(), false});
    blocks.emplace_back(SheetParagraph{
        {WF_TEXT(
             "Tolerances, all assumed: period and on-time %1, %2 of what is set or half a step, whichever is "
             "most; water at the far end %3 or %4 later than read; drip back %5 or %6 later than the model "
             "expects in the weather of the readings, and before the stop."),
         {any(assumed.timer_least), share(assumed.timer_share), any(assumed.fill_least),
          share(assumed.fill_share), any(assumed.drip_least), share(assumed.drip_share)}},
        false});
}

}  // namespace

void add_proof(Blocks& blocks, const SheetInputs& inputs) {
    const auto& house = inputs.file.house;
    const auto run = prove(inputs.file, inputs.timings, inputs.advice);
    blocks.emplace_back(SheetHeading{WF_TEXT("Proof run")});
    const bool watched = std::ranges::any_of(
        run.timers, [](const TimerProof& proof) { return proof.verdict != ProofVerdict::not_watched; });
    if (watched) {
        add_rule(blocks);
    }
    for (const auto& proof : run.timers) {
        const auto* timer = house.timer(proof.timer);
        const auto name = timer != nullptr ? label_of(house, *timer) : verbatim(proof.timer.text);
        blocks.emplace_back(SheetParagraph{{WF_TEXT("%1: %2"), {name, proof.text}}, true});
        if (proof.verdict == ProofVerdict::not_watched) {
            continue;
        }
        add_lines(blocks, house, proof);
        if (proof.verdict == ProofVerdict::fail && !proof.missing.empty()) {
            for (const auto& missing : proof.missing) {
                blocks.emplace_back(SheetParagraph{{WF_TEXT("Not seen: %1"), {missing}}, false});
            }
        }
        int number = 0;
        for (const auto& likely : proof.causes) {
            blocks.emplace_back(SheetParagraph{
                {WF_TEXT("Likely cause %1: %2 Next check: %3"), {++number, likely.cause, likely.next_check}},
                false});
        }
    }
    if (run.timers.empty()) {
        blocks.emplace_back(SheetParagraph{WF_TEXT("Not done: the house has no timer."), false});
    }
}

}  // namespace wetfront
