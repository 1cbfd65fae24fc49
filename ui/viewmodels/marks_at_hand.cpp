// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/marks_at_hand.h"

#include <QCoreApplication>

namespace wetfront::ui {
namespace {

class MarksAtHandWords {
    Q_DECLARE_TR_FUNCTIONS(MarksAtHandWords)
};

bool is_of(const Mark& mark, const Id& pump, MarksOf of) {
    return mark.pump == pump && mark.proof == (of == MarksOf::proof_run);
}

}  // namespace

Mark mark_of(const Press& press, Id id, const PossibleMark& what, const Id& pump) {
    Mark mark;
    mark.id = std::move(id);
    mark.kind = what.kind;
    mark.pump = pump;
    mark.bank = what.bank;
    mark.at = press.at;
    mark.wall = press.wall;
    mark.timed_by = press.timed_by;
    mark.stamp_error_ns = press.stamp_error_ns;
    return mark;
}

QString mark_words(MarkKind kind, const QString& bank) {
    switch (kind) {
        case MarkKind::pump_start:
            return MarksAtHandWords::tr("Pump starts");
        case MarkKind::pump_stop:
            return MarksAtHandWords::tr("Pump stops");
        case MarkKind::water_at_far_end:
            return MarksAtHandWords::tr("Water at the far end of %1").arg(bank);
        case MarkKind::far_end_drips:
            return MarksAtHandWords::tr("%1 drips evenly at the far end").arg(bank);
        case MarkKind::drip_ends:
            return MarksAtHandWords::tr("%1 stops dripping").arg(bank);
        case MarkKind::first_dry_patch:
            return MarksAtHandWords::tr("First dry patch on %1").arg(bank);
        case MarkKind::back_on_automatic:
            return MarksAtHandWords::tr("Pump back on automatic");
    }
    return {};
}

std::map<Id, PressDoubt> doubts_of(const VisitFile& file) {
    return doubtful_presses(file.visit.marks, banks_of_pumps(file.house));
}

QString doubt_words(const std::map<Id, PressDoubt>& doubts, const Id& mark) {
    const auto found = doubts.find(mark);
    if (found == doubts.end()) {
        return {};
    }
    switch (found->second) {
        case PressDoubt::second_press:
            return MarksAtHandWords::tr("pressed twice: not used");
        case PressDoubt::too_soon:
            return MarksAtHandWords::tr("too soon for water: not used");
    }
    return {};
}

bool earlier_in_time(const Mark& a, const Mark& b) {
    return a.at.boot_id == b.at.boot_id ? a.at.boot_ns < b.at.boot_ns : a.wall < b.wall;
}

const Mark* last_standing(const std::vector<Mark>& marks, const Id& pump, MarksOf of) {
    const Mark* last = nullptr;
    for (const auto& mark : marks) {
        if (is_of(mark, pump, of) && !mark.undone && (last == nullptr || !earlier_in_time(mark, *last))) {
            last = &mark;
        }
    }
    return last;
}

const Mark* next_undone(const std::vector<Mark>& marks, const Id& pump, MarksOf of) {
    const Mark* last = last_standing(marks, pump, of);
    const Mark* next = nullptr;
    for (const auto& mark : marks) {
        const bool behind = last == nullptr || earlier_in_time(*last, mark);
        if (is_of(mark, pump, of) && mark.undone && behind &&
            (next == nullptr || earlier_in_time(mark, *next))) {
            next = &mark;
        }
    }
    return next;
}

}  // namespace wetfront::ui
