// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <string>

#include "records/visit.h"

namespace wetfront::test {

/// One cycle as it is watched at one bank, in seconds from its start; what is not given is not marked.
struct WatchedCycle {
    double at = 0.0;  ///< its start
    std::optional<double> water = {};
    std::optional<double> drips = {};
    std::optional<double> stops = {};
};

/// Marks of a proof run on a visit, two hours after whatever was marked before.
class ProofMarks {
public:
    explicit ProofMarks(VisitFile& file) : file_{file} {
        for (const auto& mark : file.visit.marks) {
            base_ns_ = std::max(base_ns_, mark.at.boot_ns);
        }
        base_ns_ += 7'200'000'000'000;
    }

    Mark& mark(double at, MarkKind kind, const PadBank& bank) {
        Mark made;
        made.id = Id{"proof-" + std::to_string(file_.visit.marks.size() + 1)};
        made.kind = kind;
        made.pump = bank.pump;
        if (kind != MarkKind::pump_start && kind != MarkKind::pump_stop) {
            made.bank = bank.id;
        }
        made.at = {"boot-a", base_ns_ + std::llround(at * 1e9)};
        made.wall = file_.visit.started;
        made.wall.unix_ms += made.at.boot_ns / 1'000'000;
        made.timed_by = TimedBy::event_stamp;
        made.started_by = StartedBy::controller;
        made.proof = true;
        file_.visit.marks.push_back(made);
        return file_.visit.marks.back();
    }

    ProofMarks& cycle(const PadBank& bank, const WatchedCycle& seen) {
        mark(seen.at, MarkKind::pump_start, bank);
        if (seen.water) {
            mark(seen.at + *seen.water, MarkKind::water_at_far_end, bank);
        }
        if (seen.drips) {
            mark(seen.at + *seen.drips, MarkKind::far_end_drips, bank);
        }
        if (seen.stops) {
            mark(seen.at + *seen.stops, MarkKind::pump_stop, bank);
        }
        return *this;
    }

private:
    VisitFile& file_;
    std::int64_t base_ns_ = 0;
};

/// What was looked at, at that bank; made if there are no notes yet.
inline ProofNotes& looked_at(VisitFile& file, const PadBank& bank) {
    for (auto& notes : file.visit.proof) {
        if (notes.bank == bank.id) {
            return notes;
        }
    }
    file.visit.proof.emplace_back().bank = bank.id;
    return file.visit.proof.back();
}

/// The first run watched, counted from the last change of that timer.
inline void counted_from_change(VisitFile& file, const Timer& timer, double first) {
    for (auto& notes : file.visit.proof) {
        if (notes.timer == timer.id) {
            notes.cycles_since_change = first;
            return;
        }
    }
    auto& notes = file.visit.proof.emplace_back();
    notes.timer = timer.id;
    notes.cycles_since_change = first;
}

}  // namespace wetfront::test
