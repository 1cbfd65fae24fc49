// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "cycle/proof.h"
#include "english.h"
#include "support/visit_builder.h"
#include "support/watched_cycles.h"

namespace wetfront::test {

/// A house whose one bank fills in 40 s, is wet through in 140 s and dries out in 2400 s; left in its timer:
/// 90 s in 300 s. Proved with what a test watches.
class Proof {
public:
    explicit Proof(TimerKind kind = TimerKind::fixed_interval, int banks = 1) : visit{banks, 1, kind} {
        visit.both_weathers();
        for (int bank = 1; bank <= banks; ++bank) {
            for (const double more : {-1.0, 0.0, 1.0}) {
                visit.run(bank, {.fill = 40.0 + more, .wet_through = 140.0 + more});
            }
            visit.run(bank, {.dry_out = 2400.0});
        }
        visit.left().period = typed<Duration>("300s");
        visit.left().base_on_time = typed<Duration>("90s");
        counted_from_change(file(), visit.timer(1), 3.0);
        for (int bank = 1; bank <= banks; ++bank) {
            looked_at(file(), visit.bank(bank)).even_drip = true;
            looked_at(file(), visit.bank(bank)).dry_patch = false;
        }
    }

    VisitFile& file() { return visit.file(); }
    ProofNotes& looked() { return looked_at(file(), visit.bank(1)); }
    Proof& watch(const WatchedCycle& cycle) {
        marks().cycle(visit.bank(1), cycle);
        return *this;
    }
    /// One good cycle and the start of the next.
    Proof& watch_good() {
        return watch({.at = 0.0, .water = 41.0, .drips = 55.0, .stops = 90.0}).watch({.at = 300.0});
    }
    [[nodiscard]] TimerProof result() {
        const auto run = prove(file(), timings_of(file()), advise(file()));
        EXPECT_EQ(run.timers.size(), 1U);
        return run.timers.at(0);
    }
    [[nodiscard]] ProofLine line(ProofQuantity what) {
        const auto lines = result().lines;
        const auto found = std::ranges::find(lines, what, &ProofLine::what);
        EXPECT_NE(found, lines.end()) << english(label_of(what));
        return found == lines.end() ? ProofLine{} : *found;
    }
    [[nodiscard]] ProofVerdict verdict(ProofQuantity what) { return line(what).verdict; }
    [[nodiscard]] std::vector<std::string> causes() {
        std::vector<std::string> texts;
        for (const auto& cause : result().causes) {
            texts.push_back(english(cause.cause));
            EXPECT_FALSE(cause.next_check.empty()) << texts.back();
        }
        return texts;
    }
    [[nodiscard]] std::string first_cause() {
        const auto all = causes();
        return all.empty() ? "" : all.front();
    }

    VisitBuilder visit;

private:
    // All cycles of one test are told from the same zero.
    ProofMarks& marks() {
        if (!marks_) {
            marks_.emplace(file());
        }
        return *marks_;
    }
    std::optional<ProofMarks> marks_;
};

}  // namespace wetfront::test
