// SPDX-License-Identifier: Apache-2.0
#include "store/store.h"

#include <utility>

#include "records/record_text.h"
#include "store/backup_name.h"
#include "store/journal.h"
#include "store/lists.h"
#include "store/new_file.h"
#include "store/removal.h"
#include "store/running.h"
#include "store/store_private.h"
#include "store/stored_records.h"
#include "store/whole_copy.h"

namespace wetfront {

using store_detail::check_open;
using store_detail::need_head;
using store_detail::Pen;
using store_detail::present;
using store_detail::put;
using store_detail::Statements;

Store::Store(std::unique_ptr<Private> p) : d_{std::move(p)} {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;
Store::~Store() = default;

Result<Store> Store::open(const std::filesystem::path& path, const Clock& clock, OpenMode mode) {
    WF_TRY(auto file, store_detail::RecordFile::open(path, clock, mode));
    auto made = std::unique_ptr<Private>{new Private{.file = std::move(file), .clock = clock}};
    WF_CHECK(made->read([&](Statements& sql) -> Result<void> {
        const auto row = sql("SELECT d.device, d.id FROM this_device JOIN device AS d USING (device)");
        if (!row.next_row()) {
            return storage_error(made->file.item(), "it does not say which device writes it",
                                 "the file is damaged; go back to a good copy");
        }
        made->device_key = store_detail::number_at(row, 0);
        made->device = store_detail::id_at(row, 1);
        return boost::outcome_v2::success();
    }));
    return Store{std::move(made)};
}

const Id& Store::device() const {
    return d_->device;
}
const std::filesystem::path& Store::file() const {
    return d_->file.path();
}
OpenMode Store::mode() const {
    return d_->file.mode();
}
const std::optional<Error>& Store::loss() const {
    return d_->file.loss();
}
Id Store::new_id() {
    return d_->ids.next();
}

Result<void> Store::add_mark(const Id& visit, const Mark& mark) {
    return d_->write([&](const Pen& pen) -> Result<void> {
        WF_CHECK(check_open(pen.sql, visit));
        return store_detail::add_mark(pen, visit, mark);
    });
}

Result<void> Store::set_undone(const Id& mark, bool undone) {
    return d_->write([&](const Pen& pen) -> Result<void> {
        const auto found = store_detail::mark_with(pen.sql, mark);
        if (!found) {
            return bad_input("mark", mark.text, "there is none with this id in the record file");
        }
        WF_CHECK(check_open(pen.sql, found->visit));
        store_detail::set_undone(pen, found->mark, undone);
        return boost::outcome_v2::success();
    });
}

Result<std::vector<Mark>> Store::marks_of(const Id& visit) const {
    return d_->read([&](Statements& sql) -> Result<std::vector<Mark>> {
        WF_CHECK(need_head(sql, RecordKind::visit, visit));
        return store_detail::marks_of(sql, visit);
    });
}

Result<void> Store::save(const Farm& farm) {
    return d_->write([&](const Pen& pen) { return put(pen, farm); });
}
Result<void> Store::save(const House& house) {
    return d_->write([&](const Pen& pen) { return put(pen, house); });
}
Result<void> Store::save(const Visit& visit) {
    return d_->write([&](const Pen& pen) { return put(pen, visit); });
}
Result<void> Store::save(const SettingTemplate& described) {
    return d_->write([&](const Pen& pen) { return put(pen, described); });
}

Result<Farm> Store::farm(const Id& id) const {
    return d_->read([&](Statements& sql) { return present(sql, RecordKind::farm, id, farm_of); });
}
Result<House> Store::house(const Id& id) const {
    return d_->read([&](Statements& sql) { return present(sql, RecordKind::house, id, house_of); });
}
Result<Visit> Store::visit(const Id& id) const {
    return d_->read([&](Statements& sql) -> Result<Visit> {
        WF_TRY(auto visit, present(sql, RecordKind::visit, id, visit_of));
        visit.marks = store_detail::marks_of(sql, id);
        return visit;
    });
}

Result<SettingTemplate> Store::setting_template(const Id& id) const {
    return d_->read(
        [&](Statements& sql) { return present(sql, RecordKind::setting_template, id, template_of); });
}

Result<VisitFile> Store::visit_file(const Id& visit) const {
    return d_->read([&](Statements& sql) { return store_detail::visit_file_of(sql, visit, d_->last_read); });
}

Result<std::vector<Farm>> Store::farms() const {
    return d_->read(
        [&](Statements& sql) { return store_detail::all_by_name(sql, RecordKind::farm, farm_of); });
}

Result<std::vector<SettingTemplate>> Store::setting_templates() const {
    return d_->read([&](Statements& sql) {
        return store_detail::all_by_name(sql, RecordKind::setting_template, template_of);
    });
}

Result<std::vector<HouseSummary>> Store::houses() const {
    return d_->read(
        [](Statements& sql) -> Result<std::vector<HouseSummary>> { return store_detail::house_list(sql); });
}

Result<std::vector<VisitSummary>> Store::visits_of(const Id& house) const {
    return d_->read([&](Statements& sql) -> Result<std::vector<VisitSummary>> {
        WF_CHECK(need_head(sql, RecordKind::house, house));
        return store_detail::visit_list(sql, house);
    });
}

Result<std::optional<Id>> Store::visit_with_running_stopwatch(TimedIn where) const {
    return d_->read([&](Statements& sql) -> Result<std::optional<Id>> {
        for (const auto& visit : store_detail::open_visits(sql, where)) {
            WF_TRY(const bool runs, store_detail::stopwatch_runs(sql, visit, d_->clock));
            if (runs) {
                return std::optional{visit};
            }
        }
        return std::optional<Id>{};
    });
}

Result<int> Store::revision_of(const Id& visit) const {
    return d_->read([&](Statements& sql) -> Result<int> {
        WF_TRY(const auto head, need_head(sql, RecordKind::visit, visit));
        return head.number;
    });
}

Result<RecordContent> Store::content() const {
    return store_detail::guarded(d_->file.item(), [&]() -> Result<RecordContent> {
        return store_detail::content_of(d_->file.database());
    });
}

Result<std::optional<int>> Store::entries_since(const RecordContent& copy) const {
    WF_TRY(const auto now, content());
    return store_detail::guarded(d_->file.item(), [&]() -> Result<std::optional<int>> {
        if (store_detail::latest_of_first(d_->file.database(), copy.entries) != copy.latest) {
            return std::optional<int>{};
        }
        return std::optional{now.entries - copy.entries};
    });
}

Result<std::filesystem::path> Store::back_up(const std::filesystem::path& folder,
                                             const CopyProgress& progress) const {
    const auto& file = d_->file.path();
    const std::string item = "backup folder " + folder.string();
    WF_CHECK(store_detail::make_folder(folder, item));
    return store_detail::guarded(item, [&] {
        return store_detail::copy_whole(
            d_->file.database(), folder / store_detail::backup_name(file, d_->clock.wall_now()), progress);
    });
}

Result<void> Store::add(std::span<const VisitFile> files) {
    for (const auto& file : files) {
        WF_CHECK(check_references(file));
    }
    return d_->write([&](const Pen& pen) -> Result<void> {
        for (const auto& file : files) {
            WF_CHECK(store_detail::put_new(pen, file));
        }
        return boost::outcome_v2::success();
    });
}

Result<void> Store::set_removed(RecordKind kind, const Id& id, bool removed) {
    return d_->write([&](const Pen& pen) -> Result<void> {
        return store_detail::set_removed(pen, kind, id, removed, d_->clock);
    });
}

Result<std::vector<RemovedRecord>> Store::removed() const {
    return d_->read([](Statements& sql) -> Result<std::vector<RemovedRecord>> {
        return store_detail::removed_records(sql);
    });
}

}  // namespace wetfront
