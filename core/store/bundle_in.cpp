// SPDX-License-Identifier: Apache-2.0
#include <sqlite3.h>

#include <map>
#include <set>

#include "store/aside.h"
#include "store/entry_judge.h"
#include "store/read_ahead.h"
#include "store/split_records.h"
#include "store/store_private.h"

namespace wetfront {
namespace {

using namespace store_detail;

/// The statement that adds a row of contents, for every column of the table.
class ContentRow {
public:
    ContentRow(SQLite::Database& db, const std::string& table) : columns_{columns_of(db, table)} {
        std::string names = "entry";
        std::string places = "?";
        for (const auto& column : columns_) {
            names += ", " + column;
            places += ", ?";
        }
        statement_.emplace(db, "INSERT INTO " + table + " (" + names + ") VALUES (" + places + ")");
    }

    void add(std::int64_t entry, const Fields& fields) {
        auto& row = *statement_;
        row.bind(1, entry);
        int place = 1;
        for (const auto& column : columns_) {
            ++place;
            const auto found = fields.find(column);
            if (found == fields.end()) {
                row.bind(place);
            } else if (const auto* number = std::get_if<std::int64_t>(&found->second)) {
                row.bind(place, *number);
            } else if (const auto* text = std::get_if<std::string>(&found->second)) {
                row.bindNoCopy(place, *text);
            } else {
                const auto& bytes = std::get<Bytes>(found->second).bytes;
                row.bindNoCopy(place, bytes.data(), static_cast<int>(bytes.size()));
            }
        }
        row.exec();
        row.reset();
    }

private:
    static std::vector<std::string> columns_of(SQLite::Database& db, const std::string& table) {
        SQLite::Statement rows{db, "SELECT name FROM pragma_table_info(?) WHERE name <> 'entry'"};
        rows.bind(1, table);
        std::vector<std::string> columns;
        while (rows.executeStep()) {
            columns.push_back(rows.getColumn(0).getString());
        }
        return columns;
    }

    std::vector<std::string> columns_;
    std::optional<SQLite::Statement> statement_;
};

/// One bundle coming in, within one transaction.
class Intake {
public:
    Intake(Statements& sql, std::int64_t this_device)
        : sql_{sql},
          this_device_{this_device},
          judge_{sql},
          entry_row_{
              sql.database(),
              "INSERT INTO entry (device, seq, unix_ms, utc_offset_min, hash, before) VALUES (?, ?, ?, "
              "?, ?, ?)"} {}

    [[nodiscard]] Result<BundleReport> take_all(std::string_view text) {
        WF_TRY(const auto file, unsealed(text, "wetfront bundle"));
        WF_TRY(auto reader, BundleReader::begin(file.content));
        report_.sha256 = file.sha256;
        report_.from = reader.head().from;
        report_.made = reader.head().made;
        WF_CHECK(know_devices(reader.head()));
        ReadAhead ahead{std::move(reader)};
        for (;;) {
            WF_TRY(const auto read, ahead.next());
            if (read == nullptr) {
                break;
            }
            ++report_.entries;
            WF_CHECK(take(*read));
        }
        WF_CHECK(take_from_aside());
        tell_aside();
        report_.split = split_records(sql_);
        return std::move(report_);
    }

private:
    struct Device {
        std::int64_t key = 0;
        bool is_new = false;       ///< nothing of it was here before this bundle
        std::int64_t highest = 0;  ///< number of its entries in this bundle
        std::int64_t last = 0;     ///< number of the last one
        Hash last_hash{};
    };

    Result<void> know_devices(const BundleHead& head) {
        for (const auto& device : head.devices) {
            const auto row =
                sql_("SELECT device, name, made_unix_ms, made_utc_offset_min FROM device WHERE id = ?");
            Binder{row}(device.id);
            if (row.next_row()) {
                if (text_at(row, 1) != device.name || time_at(row, 2) != device.made) {
                    return bad_input("bundle, device " + device.id.text, device.name,
                                     "the record file knows it by another name or age; nothing was taken in");
                }
                devices_[device.id.text] = {number_at(row, 0)};
                continue;
            }
            const auto insert =
                sql_("INSERT INTO device (id, name, made_unix_ms, made_utc_offset_min) VALUES (?, ?, ?, ?)");
            Binder{insert}(device.id)(device.name)(device.made);
            insert.run();
            devices_[device.id.text] = {std::int64_t{sql_.database().getLastInsertRowid()}, true};
        }
        if (!devices_.contains(head.from.text)) {
            return bad_input("bundle, line 2", head.from.text, "the device that made it is not in its list");
        }
        return boost::outcome_v2::success();
    }

    Result<void> take(const ReadAhead::Read& read) {
        const auto& entry = read.entry;
        const auto& head = entry.head;
        const auto known = devices_.find(head.device);
        const std::string item =
            "bundle, entry " + std::to_string(head.seq) + " of device " + printable(head.device, 64);
        if (known == devices_.end()) {
            return bad_input(item, "", "its device is not in the bundle's list");
        }
        if (!read.is_what_was_written) {
            return bad_input(item, "", "it is not what its device wrote: its hash is another");
        }
        auto& device = known->second;
        if (const auto there = hash_of(device, head.seq)) {
            if (there->hash != entry.hash) {
                return bad_input(
                    item, "",
                    "there is another entry with this number; nothing was taken in. A record file "
                    "that was copied or set back goes on as the same device: write with one of "
                    "the two only");
            }
            if (there->aside) {
                waiting_.emplace(std::pair{device.key, head.seq}, Since::earlier);
            } else {
                ++report_.there;
            }
            return boost::outcome_v2::success();
        }
        if (device.key == this_device_) {
            return bad_input(item, "",
                             "this device wrote it, and it is not in the record file; nothing was taken in. "
                             "The file was set back to an older copy by hand: restore the latest one by "
                             "wetfront-cli store restore");
        }
        WF_CHECK(check_neighbours(device, entry, item));
        WF_TRY(const auto why, judge_.why_not(entry));
        if (why.empty()) {
            insert(device.key, entry);
            ++report_.added;
        } else {
            put_aside(sql_, device.key, entry, why);
            waiting_.emplace(std::pair{device.key, head.seq}, Since::now);
        }
        device.highest = std::max(device.highest, head.seq);
        device.last = head.seq;
        device.last_hash = entry.hash;
        return boost::outcome_v2::success();
    }

    struct There {
        Hash hash{};
        std::optional<Hash> before;
        bool aside = false;
    };

    std::optional<There> hash_of(const Device& device, std::int64_t seq) {
        if (device.is_new && seq > device.highest) {
            return std::nullopt;
        }
        for (const bool aside : {false, true}) {
            const auto row = sql_(aside ? "SELECT hash, before FROM aside WHERE device = ? AND seq = ?"
                                        : "SELECT hash, before FROM entry WHERE device = ? AND seq = ?");
            Binder{row}(device.key)(seq);
            if (row.next_row()) {
                return There{hash_at(row, 0), null_at(row, 1) ? std::nullopt : std::optional{hash_at(row, 1)},
                             aside};
            }
        }
        return std::nullopt;
    }

    /// Both belong to the same history of their device.
    Result<void> check_neighbours(const Device& device, const BundleEntry& entry, const std::string& item) {
        const auto seq = entry.head.seq;
        const bool follows = device.last > 0 && device.last == seq - 1;
        const auto before =
            follows ? std::optional{There{device.last_hash, {}, false}} : hash_of(device, seq - 1);
        const auto after = hash_of(device, seq + 1);
        if ((before && before->hash != entry.before) || (seq == 1 && entry.before != Hash{}) ||
            (after && after->before && *after->before != entry.hash)) {
            return bad_input(item, "",
                             "it does not follow what is here of the same device; nothing was taken in");
        }
        return boost::outcome_v2::success();
    }

    void insert(std::int64_t device, const BundleEntry& entry) {
        const auto& head = entry.head;
        entry_row_.bind(1, device);
        entry_row_.bind(2, head.seq);
        entry_row_.bind(3, head.at.unix_ms);
        entry_row_.bind(4, head.at.utc_offset_minutes);
        entry_row_.bindNoCopy(5, entry.hash.data(), static_cast<int>(entry.hash.size()));
        entry_row_.bindNoCopy(6, entry.before.data(), static_cast<int>(entry.before.size()));
        entry_row_.exec();
        entry_row_.reset();
        const auto number = std::int64_t{sql_.database().getLastInsertRowid()};
        auto& [table, fields] = entry.content;
        rows_.try_emplace(table, sql_.database(), table).first->second.add(number, fields);
        judge_.taken_in();
        count(entry.content);
    }

    void count(const Content& content) {
        if (content.table == "mark") {
            ++report_.marks;
        } else if (content.table == "revision" && std::get<std::int64_t>(content.fields.at("number")) == 1) {
            switch (enum_value<RecordKind>(std::get<std::string>(content.fields.at("kind"))).value()) {
                case RecordKind::farm:
                    ++report_.farms;
                    break;
                case RecordKind::house:
                    ++report_.houses;
                    break;
                case RecordKind::visit:
                    ++report_.visits;
                    break;
                case RecordKind::setting_template:
                    ++report_.templates;
                    break;
            }
        }
    }

    struct Waiting {
        std::int64_t device;
        BundleEntry entry;
        std::string why;
    };

    Result<std::vector<Waiting>> all_aside() {
        std::vector<Waiting> all;
        const auto rows = sql_(aside_entries);
        while (rows.next_row()) {
            WF_TRY(auto entry, aside_entry_at(rows));
            all.push_back({number_at(rows, 8), std::move(entry), text_at(rows, 9)});
        }
        return all;
    }

    /// As long as one entry makes room for another.
    Result<void> take_from_aside() {
        WF_TRY(auto all, all_aside());
        for (bool more = !all.empty(); more;) {
            more = false;
            for (auto& waiting : all) {
                const auto found = judge_.why_not(waiting.entry);
                const auto why = found ? found.value() : found.error().text();
                if (why.empty()) {
                    leave_aside(waiting);
                    insert(waiting.device, waiting.entry);
                    waiting.device = 0;
                    more = true;
                } else if (why != waiting.why) {
                    say_why(waiting, why);
                    waiting.why = why;
                }
            }
            std::erase_if(all, [](const Waiting& waiting) { return waiting.device == 0; });
        }
        return boost::outcome_v2::success();
    }

    void leave_aside(const Waiting& waiting) {
        const auto row = sql_("DELETE FROM aside WHERE device = ? AND seq = ?");
        Binder{row}(waiting.device)(waiting.entry.head.seq);
        row.run();
        const auto found = waiting_.find({waiting.device, waiting.entry.head.seq});
        if (found == waiting_.end()) {
            ++report_.taken_in_later;
            return;
        }
        ++(found->second == Since::now ? report_.added : report_.taken_in_later);
        if (found->second == Since::earlier) {
            ++report_.there;
        }
        waiting_.erase(found);
    }

    void say_why(const Waiting& waiting, const std::string& why) {
        const auto row = sql_("UPDATE aside SET why = ? WHERE device = ? AND seq = ?");
        Binder{row}(why)(waiting.device)(waiting.entry.head.seq);
        row.run();
    }

    void tell_aside() {
        const auto rows = sql_(aside_entries);
        while (rows.next_row()) {
            if (waiting_.contains({number_at(rows, 8), number_at(rows, 1)})) {
                report_.aside.push_back(
                    {{id_at(rows, 0), number_at(rows, 1)}, text_at(rows, 6), text_at(rows, 9)});
            }
        }
    }

    enum class Since { now, earlier };

    Statements& sql_;
    std::int64_t this_device_;
    EntryJudge judge_;
    SQLite::Statement entry_row_;
    std::map<std::string, ContentRow> rows_;
    std::map<std::string, Device> devices_;
    std::map<std::pair<std::int64_t, std::int64_t>, Since> waiting_;  ///< of this bundle, kept aside
    BundleReport report_;
};

/// What the file itself refuses is no fault of the disk.
Result<BundleReport> taken_in(Statements& sql, std::int64_t this_device, std::string_view text) {
    try {
        return Intake{sql, this_device}.take_all(text);
    } catch (const SQLite::Exception& refused) {
        if ((refused.getErrorCode() & 0xFF) != SQLITE_CONSTRAINT) {
            throw;
        }
        return bad_input("bundle", refused.what(),
                         "it breaks a rule of the record file; nothing was taken in");
    }
}

}  // namespace

Result<BundleReport> Store::take_in(std::string_view text) {
    BundleReport report;
    WF_CHECK(d_->write([&](const Pen& pen) -> Result<void> {
        WF_TRY(report, taken_in(pen.sql, pen.device, text));
        return boost::outcome_v2::success();
    }));
    return report;
}

Result<BundleReport> Store::preview_bundle(std::string_view text) {
    if (d_->file.mode() == OpenMode::read_only) {
        return storage_error(d_->file.item(), "it was opened read-only",
                             "a preview tries the import and takes it back; open the file for writing");
    }
    return guarded(d_->file.item(), [&]() -> Result<BundleReport> {
        const SQLite::Transaction taken_back{d_->file.database(), SQLite::TransactionBehavior::IMMEDIATE};
        return taken_in(*d_->sql, d_->device_key, text);
    });
}

Result<std::vector<OtherDevice>> Store::other_devices() const {
    return d_->read([](Statements& sql) -> Result<std::vector<OtherDevice>> {
        std::vector<OtherDevice> all;
        const auto rows =
            sql("SELECT id, name FROM device WHERE device <> (SELECT device FROM this_device) "
                "ORDER BY name, id");
        while (rows.next_row()) {
            all.push_back({id_at(rows, 0), text_at(rows, 1)});
        }
        return all;
    });
}

Result<std::vector<SplitRecord>> Store::split_records() const {
    return d_->read(
        [](Statements& sql) -> Result<std::vector<SplitRecord>> { return store_detail::split_records(sql); });
}

Result<void> Store::choose_state(const std::string& revision) {
    return d_->write([&](const Pen& pen) { return store_detail::choose_state(pen, revision); });
}

Result<std::vector<KeptAside>> Store::kept_aside() const {
    return d_->read([](Statements& sql) -> Result<std::vector<KeptAside>> {
        std::vector<KeptAside> all;
        const auto rows = sql(aside_entries);
        while (rows.next_row()) {
            all.push_back({{id_at(rows, 0), number_at(rows, 1)}, text_at(rows, 6), text_at(rows, 9)});
        }
        return all;
    });
}

}  // namespace wetfront
