// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <set>

#include "store/aside.h"
#include "store/store_private.h"
#include "store/stored_records.h"
#include "store/written_file.h"

namespace wetfront {
namespace {

using namespace store_detail;

using Record = std::pair<RecordKind, std::string>;

/// Column 0 of every row.
std::vector<std::string> texts_of(Statements& sql, const std::string& question, const std::string& value) {
    std::vector<std::string> found;
    const auto rows = sql(question);
    Binder{rows}(value);
    while (rows.next_row()) {
        found.push_back(text_at(rows, 0));
    }
    return found;
}

/// What is named, and what that refers to.
class Chosen {
public:
    explicit Chosen(Statements& sql) : sql_{sql} {}

    Result<void> add_all(const BundleChoice& choice) {
        for (const auto& farm : choice.farms) {
            WF_CHECK(need_head(sql_, RecordKind::farm, farm));
            records_.emplace(RecordKind::farm, farm.text);
            for (const auto& house :
                 texts_of(sql_, "SELECT DISTINCT record FROM revision WHERE kind = 'house' AND farm = ?",
                          farm.text)) {
                WF_CHECK(add_house(Id{house}));
            }
        }
        for (const auto& house : choice.houses) {
            WF_CHECK(add_house(house));
        }
        for (const auto& described : choice.templates) {
            WF_CHECK(need_head(sql_, RecordKind::setting_template, described));
            records_.emplace(RecordKind::setting_template, described.text);
        }
        return boost::outcome_v2::success();
    }

    /// In the order of writing.
    std::vector<std::int64_t> entries(bool sheets) {
        for (const auto& [kind, record] : records_) {
            add_entries("SELECT entry FROM revision WHERE kind = ?2 AND record = ?1", kind, record);
            add_entries("SELECT entry FROM removal WHERE kind = ?2 AND record = ?1", kind, record);
            if (kind == RecordKind::visit) {
                add_entries("SELECT entry FROM mark WHERE visit = ?1", kind, record);
                add_entries(
                    "SELECT c.entry FROM mark AS m JOIN mark_change AS c ON c.mark = m.id WHERE m.visit = ?1",
                    kind, record);
                add_entries("SELECT entry FROM picture WHERE visit = ?1", kind, record);
                if (sheets) {
                    add_entries("SELECT entry FROM sheet WHERE visit = ?1", kind, record);
                }
            }
        }
        std::sort(entries_.begin(), entries_.end());
        return std::move(entries_);
    }

private:
    Result<void> add_house(const Id& id) {
        if (!records_.emplace(RecordKind::house, id.text).second) {
            return boost::outcome_v2::success();
        }
        WF_TRY(const auto house, present(sql_, RecordKind::house, id, house_of));
        for (const auto& farm : texts_of(
                 sql_, "SELECT DISTINCT farm FROM revision WHERE kind = 'house' AND record = ?", id.text)) {
            records_.emplace(RecordKind::farm, farm);
        }
        for (const auto& visit : texts_of(
                 sql_, "SELECT DISTINCT record FROM revision WHERE kind = 'visit' AND house = ?", id.text)) {
            records_.emplace(RecordKind::visit, visit);
        }
        for (const auto& timer : house.timers) {
            if (timer.controller && head_of(sql_, RecordKind::setting_template, timer.controller->id)) {
                records_.emplace(RecordKind::setting_template, timer.controller->id.text);
            }
        }
        return boost::outcome_v2::success();
    }

    void add_entries(const std::string& question, RecordKind kind, const std::string& record) {
        const auto rows = sql_(question);
        Binder bind{rows};
        bind(record);
        if (question.find("?2") != std::string::npos) {
            bind(enum_name(kind));
        }
        while (rows.next_row()) {
            entries_.push_back(number_at(rows, 0));
        }
    }

    Statements& sql_;
    std::set<Record> records_;
    std::vector<std::int64_t> entries_;
};

/// What the device with that key has neither written nor acknowledged.
constexpr const char* new_entries =
    "SELECT e.entry FROM entry AS e WHERE e.device <> ?1 AND NOT EXISTS (SELECT 1 FROM delivered AS x "
    "WHERE x.receiver = ?1 AND x.device = e.device AND x.seq = e.seq) ORDER BY e.entry";

std::int64_t key_of(Statements& sql, const Id& device) {
    const auto row = sql("SELECT device FROM device WHERE id = ?");
    Binder{row}(device);
    return row.next_row() ? number_at(row, 0) : 0;
}

bool is_delivered(Statements& sql, std::int64_t receiver, std::int64_t device, std::int64_t seq) {
    const auto row = sql("SELECT 1 FROM delivered WHERE receiver = ? AND device = ? AND seq = ?");
    Binder{row}(receiver)(device)(seq);
    return row.next_row();
}

std::vector<std::int64_t> numbers_of(Statements& sql, const std::string& question, std::int64_t value) {
    std::vector<std::int64_t> found;
    const auto rows = sql(question);
    Binder{rows}(value);
    while (rows.next_row()) {
        found.push_back(number_at(rows, 0));
    }
    return found;
}

/// An entry of the record, with the hash of the one before it of its device.
Result<BundleEntry> entry_at(Statements& sql, std::int64_t number) {
    BundleEntry entry;
    {
        const auto row = sql(
            "SELECT d.id, e.seq, e.unix_ms, e.utc_offset_min, e.hash, coalesce(e.before, (SELECT p.hash FROM "
            "entry AS p WHERE p.device = e.device AND p.seq = e.seq - 1), zeroblob(32)) FROM entry AS e "
            "JOIN device AS d ON d.device = e.device WHERE e.entry = ?");
        Binder{row}(number);
        if (row.next_row()) {
            entry.head = {text_at(row, 0), number_at(row, 1), time_at(row, 2)};
            entry.hash = hash_at(row, 4);
            entry.before = hash_at(row, 5);
        }
    }
    auto contents = contents_of(sql, content_tables, number);
    if (contents.size() == 1) {
        entry.content = {contents.front().table, without_nulls(std::move(contents.front().fields))};
    }
    if (!entry.is_what_was_written()) {
        return storage_error("entry " + std::to_string(entry.head.seq) + " of device " + entry.head.device,
                             "it is not what was written: its hash is another",
                             "no bundle was made; wetfront-cli store verify tells what is damaged");
    }
    return entry;
}

class Outgoing {
public:
    Outgoing(Statements& sql, const BundleChoice& choice) : sql_{sql}, choice_{choice} {}

    Result<void> gather() {
        const auto receiver = choice_.new_for ? key_of(sql_, *choice_.new_for) : 0;
        std::vector<std::int64_t> numbers;
        if (choice_.new_for || choice_.everything) {
            numbers = numbers_of(sql_, new_entries, receiver);
        } else {
            Chosen chosen{sql_};
            WF_CHECK(chosen.add_all(choice_));
            numbers = chosen.entries(choice_.sheets);
        }
        for (const auto number : numbers) {
            WF_TRY(const auto entry, entry_at(sql_, number));
            if (choice_.sheets || entry.content.table != "sheet") {
                WF_CHECK(add(entry));
            }
        }
        const auto rows = sql_(aside_entries);
        while (rows.next_row()) {
            const auto device = number_at(rows, 8);
            if (device != receiver && !is_delivered(sql_, receiver, device, number_at(rows, 1))) {
                WF_TRY(const auto entry, aside_entry_at(rows));
                WF_CHECK(add(entry));
                ++aside_;
            }
        }
        return boost::outcome_v2::success();
    }

    [[nodiscard]] std::int64_t entries() const { return entries_; }
    [[nodiscard]] std::int64_t aside() const { return aside_; }

    [[nodiscard]] std::string content(const Id& from, WallTime now) const {
        BundleHead head{from, now, {}};
        const auto rows = sql_("SELECT id, name, made_unix_ms, made_utc_offset_min FROM device ORDER BY id");
        while (rows.next_row()) {
            if (id_at(rows, 0) == from || devices_.contains(text_at(rows, 0))) {
                head.devices.push_back({id_at(rows, 0), text_at(rows, 1), time_at(rows, 2)});
            }
        }
        return writer_.content(head);
    }

private:
    Result<void> add(const BundleEntry& entry) {
        writer_.add(entry);
        if (writer_.bytes() > most_bundle_bytes - room_for_the_head) {
            return bad_input("bundle", "",
                             "it would be larger than 512 MiB; choose fewer houses, or no sheets");
        }
        devices_.insert(entry.head.device);
        ++entries_;
        return boost::outcome_v2::success();
    }

    static constexpr std::size_t room_for_the_head = std::size_t{8} * 1024 * 1024;
    Statements& sql_;
    const BundleChoice& choice_;
    BundleWriter writer_;
    std::int64_t entries_ = 0;
    std::set<std::string> devices_;
    std::int64_t aside_ = 0;
};

}  // namespace

Result<BundleMade> Store::write_bundle(const BundleChoice& choice, const std::filesystem::path& file) const {
    const std::string item = "bundle " + file.string();
    if (choice.new_for == d_->device) {
        return bad_input("bundle", d_->device.text, "this is the device that would make it");
    }
    WF_TRY(const auto text, d_->read([&](Statements& sql) -> Result<std::pair<std::string, BundleMade>> {
        Outgoing outgoing{sql, choice};
        WF_CHECK(outgoing.gather());
        BundleMade made{file, {}, outgoing.entries(), outgoing.aside()};
        if (made.entries == 0) {
            return std::pair{std::string{}, std::move(made)};
        }
        const auto content = outgoing.content(d_->device, d_->clock.wall_now());
        made.sha256 = in_hex(sha256(content));
        return std::pair{sealed(content, "wetfront bundle"), std::move(made)};
    }));
    if (text.second.entries > 0) {
        WF_CHECK(guarded(item, [&] { return write_file(file, text.first, IfThere::refuse, item); }));
    }
    return text.second;
}

}  // namespace wetfront
