// SPDX-License-Identifier: Apache-2.0
#include "store/store.h"

#include <SQLiteCpp/Transaction.h>

#include <algorithm>
#include <utility>

#include "records/record_text.h"
#include "store/backup_name.h"
#include "store/failure.h"
#include "store/journal.h"
#include "store/lists.h"
#include "store/new_file.h"
#include "store/record_file.h"
#include "store/revisions.h"
#include "store/whole_copy.h"
#include "timing/stopwatch_guide.h"

namespace wetfront {

using store_detail::guarded;
using store_detail::Head;
using store_detail::Pen;
using store_detail::RecordKind;
using store_detail::Statements;

namespace {

constexpr auto success = [] { return boost::outcome_v2::success(); };

Error not_there(RecordKind kind, const Id& id) {
    return bad_input(std::string{enum_name(kind)}, id.text, "there is none with this id in the record file");
}

Result<Head> need_head(Statements& sql, RecordKind kind, const Id& id) {
    auto head = store_detail::head_of(sql, kind, id);
    if (!head) {
        return not_there(kind, id);
    }
    return std::move(*head);
}

template <class Record>
using Parser = Result<Record> (*)(std::string_view);

template <class Record>
Result<Record> record_at(Statements& sql, const std::string& revision, Parser<Record> parse) {
    auto record = parse(store_detail::document_at(sql, revision).dump());
    if (!record) {
        return storage_error("revision " + revision + " cannot be read", record.error().text(),
                             "the file is damaged or was written by another version");
    }
    return record;
}

template <class Record>
Result<Record> present(Statements& sql, RecordKind kind, const Id& id, Parser<Record> parse) {
    WF_TRY(const auto head, need_head(sql, kind, id));
    return record_at(sql, head.revision, parse);
}

template <class Record>
Result<std::vector<Record>> all_by_name(Statements& sql, RecordKind kind, Parser<Record> parse) {
    const auto rows = sql("SELECT DISTINCT record FROM revision WHERE kind = ?");
    store_detail::Binder{rows}(enum_name(kind));
    std::vector<Record> all;
    while (rows.next_row()) {
        WF_TRY(auto record, present(sql, kind, store_detail::id_at(rows, 0), parse));
        all.push_back(std::move(record));
    }
    std::sort(all.begin(), all.end(), [](const Record& a, const Record& b) {
        return store_detail::comes_before(a.name, a.id, b.name, b.id);
    });
    return all;
}

/// A record's text as a document, once it is certain that it reads back as the same record.
template <class Record>
Result<nlohmann::json> document_of(const Record& record, const std::string& text, Parser<Record> parse) {
    WF_TRY(const auto read_back, parse(text));
    if (read_back != record) {
        return bad_input("record", record.id.text, "a text of it is not UTF-8, or an id is malformed");
    }
    return nlohmann::json::parse(text);
}

Visit without_marks(Visit visit) {
    visit.marks.clear();
    return visit;
}

Result<void> put(const Pen& pen, const Farm& farm) {
    WF_TRY(const auto document, document_of(farm, farm_text(farm), parse_farm));
    add_revision(pen, RecordKind::farm, farm.id, head_of(pen.sql, RecordKind::farm, farm.id), document,
                 {.name = farm.name});
    return success();
}

Result<void> put(const Pen& pen, const House& house) {
    WF_CHECK(need_head(pen.sql, RecordKind::farm, house.farm));
    WF_TRY(const auto document, document_of(house, house_text(house), parse_house));
    add_revision(pen, RecordKind::house, house.id, head_of(pen.sql, RecordKind::house, house.id), document,
                 {.name = house.name, .farm = house.farm});
    return success();
}

Result<void> put(const Pen& pen, const SettingTemplate& described) {
    constexpr auto kind = RecordKind::setting_template;
    WF_TRY(const auto document, document_of(described, template_text(described), parse_template));
    add_revision(pen, kind, described.id, head_of(pen.sql, kind, described.id), document,
                 {.name = described.name});
    return success();
}

Result<void> check_may_follow(Statements& sql, const Head& present, const Visit& visit,
                              const nlohmann::json& document) {
    if (present.is_signed && store_detail::document_at(sql, present.revision) != document) {
        return bad_input("visit", visit.id.text,
                         "it is signed and frozen; make a correction, a new visit that replaces it");
    }
    WF_TRY(const auto before, record_at(sql, present.revision, parse_visit));
    if (before.house != visit.house || before.started != visit.started || before.replaces != visit.replaces) {
        return bad_input("visit", visit.id.text,
                         "a visit keeps its house, its start and the visit that it replaces");
    }
    return success();
}

Result<void> put(const Pen& pen, const Visit& visit) {
    WF_TRY(const auto document, document_of(without_marks(visit), visit_text(visit), parse_visit));
    WF_TRY(const auto house_head, need_head(pen.sql, RecordKind::house, visit.house));
    WF_TRY(const auto house, record_at(pen.sql, house_head.revision, parse_house));
    WF_TRY(const auto farm_head, need_head(pen.sql, RecordKind::farm, house.farm));
    const auto present = head_of(pen.sql, RecordKind::visit, visit.id);
    if (present) {
        WF_CHECK(check_may_follow(pen.sql, *present, visit, document));
    }
    add_revision(pen, RecordKind::visit, visit.id, present, document,
                 {.house = visit.house,
                  .started = visit.started,
                  .is_signed = visit.is_signed(),
                  .replaces = visit.replaces,
                  .house_revision = house_head.revision,
                  .farm_revision = farm_head.revision});
    return success();
}

Result<void> check_open(Statements& sql, const Id& visit) {
    WF_TRY(const auto head, need_head(sql, RecordKind::visit, visit));
    if (head.is_signed) {
        return bad_input("visit", visit.text, "it is signed and frozen: its marks stay as they are");
    }
    return success();
}

/// Puts a record in place that may be there already, but only with the same content.
template <class Record>
Result<void> put_new(const Pen& pen, RecordKind kind, const Record& record, Parser<Record> parse) {
    if (const auto head = head_of(pen.sql, kind, record.id)) {
        WF_TRY(const auto there, record_at(pen.sql, head->revision, parse));
        if (there != record) {
            return bad_input(std::string{enum_name(kind)}, record.id.text,
                             "it is in the record file with other content; nothing was added");
        }
        return success();
    }
    return put(pen, record);
}

Result<void> put_new(const Pen& pen, const VisitFile& file) {
    WF_CHECK(put_new(pen, RecordKind::farm, file.farm, parse_farm));
    WF_CHECK(put_new(pen, RecordKind::house, file.house, parse_house));
    const bool is_new = !head_of(pen.sql, RecordKind::visit, file.visit.id);
    WF_CHECK(put_new(pen, RecordKind::visit, without_marks(file.visit), parse_visit));
    if (!is_new) {
        if (store_detail::marks_of(pen.sql, file.visit.id) != file.visit.marks) {
            return bad_input("visit", file.visit.id.text,
                             "it is in the record file with other marks; nothing was added");
        }
        return success();
    }
    for (const auto& mark : file.visit.marks) {
        WF_CHECK(store_detail::add_mark(pen, file.visit.id, mark));
    }
    return success();
}

constexpr std::int64_t day_ms = 86'400'000;  // no reading that is used is longer
constexpr std::int64_t hour_ms = 3'600'000;  // nobody waits longer for the next event of a watched cycle

/// Across a restart only the wall clock can tell, and if it went back it cannot.
bool is_longer_ago(const Mark& mark, std::int64_t limit_ms, const Clock& clock) {
    const auto now = clock.boot_now();
    return now.boot_id == mark.at.boot_id ? (now.boot_ns - mark.at.boot_ns) / 1'000'000 > limit_ms
                                          : clock.wall_now().unix_ms - mark.wall.unix_ms > limit_ms;
}

bool stopwatch_may_run(const PumpState& state, const Clock& clock) {
    return state.running || (state.since && !is_longer_ago(*state.since, day_ms, clock));
}

/// Asks for the house only where the marks alone leave it open.
Result<bool> stopwatch_runs(Statements& sql, const Id& visit, const Clock& clock) {
    const auto marks = store_detail::marks_of(sql, visit);
    std::vector<Id> pumps;
    for (const auto& mark : marks) {
        if (std::find(pumps.begin(), pumps.end(), mark.pump) == pumps.end()) {
            pumps.push_back(mark.pump);
        }
    }
    const auto watched = pump_states(marks, pumps, MarksOf::proof_run);
    if (std::any_of(watched.begin(), watched.end(), [&](const PumpState& state) {
            return state.since && !is_longer_ago(*state.since, hour_ms, clock);
        })) {
        return true;
    }
    auto states = pump_states(marks, pumps);
    std::erase_if(states, [&](const PumpState& state) { return !stopwatch_may_run(state, clock); });
    if (states.empty()) {
        return false;
    }
    WF_TRY(const auto head, need_head(sql, RecordKind::visit, visit));
    WF_TRY(const auto house, present(sql, RecordKind::house, head.house, parse_house));
    return std::any_of(states.begin(), states.end(), [&](const PumpState& state) {
        std::vector<Id> banks;
        for (const auto& bank : house.banks) {
            if (bank.pump == state.pump) {
                banks.push_back(bank.id);
            }
        }
        return is_being_timed(state, banks);
    });
}

}  // namespace

struct Store::Private {
    store_detail::RecordFile file;
    const Clock& clock;
    IdSource ids{clock};
    std::unique_ptr<Statements> sql = std::make_unique<Statements>(file.database());
    std::int64_t device_key = 0;
    Id device = {};

    /// Runs `work` with a pen in one transaction, committed and synced if it returns no error.
    template <class Work>
    Result<void> write(Work&& work) {
        if (file.mode() == OpenMode::read_only) {
            return storage_error(file.item(), "it was opened read-only", "nothing was written");
        }
        return guarded(file.item(), [&]() -> Result<void> {
            SQLite::Transaction transaction{file.database(), SQLite::TransactionBehavior::IMMEDIATE};
            WF_CHECK(work(Pen{*sql, device_key, ids, clock.wall_now()}));
            transaction.commit();
            return success();
        });
    }

    /// Runs `ask`, which returns a Result, on the open file.
    template <class Ask>
    auto read(Ask&& ask) const {
        return guarded(file.item(), [&] { return ask(*sql); });
    }
};

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
        return success();
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
        return success();
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
    return d_->read([&](Statements& sql) { return present(sql, RecordKind::farm, id, parse_farm); });
}
Result<House> Store::house(const Id& id) const {
    return d_->read([&](Statements& sql) { return present(sql, RecordKind::house, id, parse_house); });
}
Result<Visit> Store::visit(const Id& id) const {
    return d_->read([&](Statements& sql) -> Result<Visit> {
        WF_TRY(auto visit, present(sql, RecordKind::visit, id, parse_visit));
        visit.marks = store_detail::marks_of(sql, id);
        return visit;
    });
}

Result<SettingTemplate> Store::setting_template(const Id& id) const {
    return d_->read(
        [&](Statements& sql) { return present(sql, RecordKind::setting_template, id, parse_template); });
}

Result<VisitFile> Store::visit_file(const Id& id) const {
    WF_TRY(auto visit, this->visit(id));
    return d_->read([&](Statements& sql) -> Result<VisitFile> {
        WF_TRY(const auto head, need_head(sql, RecordKind::visit, id));
        if (head.is_signed) {
            WF_TRY(auto house, record_at(sql, head.house_revision, parse_house));
            WF_TRY(auto farm, record_at(sql, head.farm_revision, parse_farm));
            return VisitFile{std::move(farm), std::move(house), std::move(visit)};
        }
        WF_TRY(auto house, present(sql, RecordKind::house, visit.house, parse_house));
        WF_TRY(auto farm, present(sql, RecordKind::farm, house.farm, parse_farm));
        return VisitFile{std::move(farm), std::move(house), std::move(visit)};
    });
}

Result<std::vector<Farm>> Store::farms() const {
    return d_->read([&](Statements& sql) { return all_by_name(sql, RecordKind::farm, parse_farm); });
}

Result<std::vector<SettingTemplate>> Store::setting_templates() const {
    return d_->read(
        [&](Statements& sql) { return all_by_name(sql, RecordKind::setting_template, parse_template); });
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

Result<std::optional<Id>> Store::visit_with_running_stopwatch() const {
    return d_->read([&](Statements& sql) -> Result<std::optional<Id>> {
        for (const auto& visit : store_detail::open_visits(sql)) {
            WF_TRY(const bool runs, stopwatch_runs(sql, visit, d_->clock));
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
    return guarded(d_->file.item(),
                   [&]() -> Result<RecordContent> { return store_detail::content_of(d_->file.database()); });
}

Result<std::optional<int>> Store::entries_since(const RecordContent& copy) const {
    WF_TRY(const auto now, content());
    return guarded(d_->file.item(), [&]() -> Result<std::optional<int>> {
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
    return guarded(item, [&] {
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
            WF_CHECK(put_new(pen, file));
        }
        return success();
    });
}

}  // namespace wetfront
