// SPDX-License-Identifier: Apache-2.0
#include "store/store_private.h"
#include "store/timeline.h"

namespace wetfront {

using store_detail::Pen;
using store_detail::Statements;
using store_detail::Timeline;
using store_detail::TimelineStep;

namespace {

std::optional<UndoStep> last_of(Statements& sql, const std::vector<TimelineStep>& steps) {
    return steps.empty() ? std::nullopt : std::optional{store_detail::described(sql, steps.back())};
}

}  // namespace

Result<std::optional<UndoStep>> Store::can_undo(const Id& visit) const {
    return d_->read([&](Statements& sql) -> Result<std::optional<UndoStep>> {
        WF_TRY(const auto line, store_detail::timeline_of(sql, visit));
        return last_of(sql, line.done);
    });
}

Result<std::optional<UndoStep>> Store::can_redo(const Id& visit) const {
    return d_->read([&](Statements& sql) -> Result<std::optional<UndoStep>> {
        WF_TRY(const auto line, store_detail::timeline_of(sql, visit));
        return last_of(sql, line.undone);
    });
}

Result<std::optional<UndoStep>> Store::undo(const Id& visit) {
    std::optional<UndoStep> step;
    WF_CHECK(d_->write([&](const Pen& pen) -> Result<void> {
        WF_TRY(const auto line, store_detail::timeline_of(pen.sql, visit));
        if (!line.done.empty()) {
            step = last_of(pen.sql, line.done);
            WF_CHECK(store_detail::restore(pen, visit, line.done.back(), line.done.back().from));
        }
        return boost::outcome_v2::success();
    }));
    return step;
}

Result<std::optional<UndoStep>> Store::redo(const Id& visit) {
    std::optional<UndoStep> step;
    WF_CHECK(d_->write([&](const Pen& pen) -> Result<void> {
        WF_TRY(const auto line, store_detail::timeline_of(pen.sql, visit));
        if (!line.undone.empty()) {
            step = last_of(pen.sql, line.undone);
            WF_CHECK(store_detail::restore(pen, visit, line.undone.back(), line.undone.back().to));
        }
        return boost::outcome_v2::success();
    }));
    return step;
}

}  // namespace wetfront
