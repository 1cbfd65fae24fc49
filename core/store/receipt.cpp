// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <limits>
#include <map>

#include "records/json_text.h"
#include "store/aside.h"
#include "store/store_private.h"
#include "store/written_file.h"

// A receipt has the outer form of a bundle (bundle_text.h). Its content is one line about it, then a line for
// each run of entries that a device numbered one after the other, with the hash of the last:
//
//   {"receiver":{"id":..,"name":..,"made":..},"bundle":"<SHA-256>","made":"<time>","received":[
//   {"device":"<id>","first":1,"last":500,"hash":".."}
//   ]}
//
// The last hash covers all of them, so the sender knows that the receiver has what it has itself.

namespace wetfront {
namespace {

using namespace store_detail;

constexpr std::string_view format = "wetfront receipt";

struct Run {
    std::string device;
    std::int64_t first = 0;
    std::int64_t last = 0;
    Hash hash{};
};

struct Receipt {
    BundleDevice receiver;
    std::string bundle;
    WallTime made;
    std::vector<Run> runs;
};

std::string text_of(const Receipt& receipt) {
    nlohmann::ordered_json head;
    head["receiver"] = {{"id", receipt.receiver.id.text},
                        {"name", receipt.receiver.name},
                        {"made", to_iso8601(receipt.receiver.made)}};
    head["bundle"] = receipt.bundle;
    head["made"] = to_iso8601(receipt.made);
    std::string text = head.dump();
    text.pop_back();
    text += ",\"received\":[";
    for (const auto& run : receipt.runs) {
        text +=
            (&run == &receipt.runs.front() ? "\n" : ",\n") +
            nlohmann::ordered_json{
                {"device", run.device}, {"first", run.first}, {"last", run.last}, {"hash", in_hex(run.hash)}}
                .dump();
    }
    return sealed(text + "\n]}\n", format);
}

bool is_text(const Json& json, const char* key) {
    return json.contains(key) && json[key].is_string();
}

Result<Run> run_of(std::string_view line, const std::string& item) {
    WF_TRY(const auto json, read_json(line, item));
    const auto is_number = [&](const char* key) {
        constexpr auto most = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
        return json.contains(key) && json[key].is_number_unsigned() && json[key].get<std::uint64_t>() > 0 &&
               json[key].get<std::uint64_t>() <= most;
    };
    const auto hash = json.is_object() && is_text(json, "hash")
                          ? hash_of_hex(json["hash"].get_ref<const std::string&>())
                          : std::nullopt;
    if (!hash || !is_text(json, "device") || json.size() != 4 || !is_number("first") || !is_number("last") ||
        json["first"] > json["last"]) {
        return bad_input(item, "", "a run of entries has device, first, last and hash");
    }
    return Run{json["device"], json["first"], json["last"], *hash};
}

Result<Receipt> receipt_of(std::string_view content) {
    const auto take_line = [&]() {
        const auto line = content.substr(0, content.find('\n'));
        content.remove_prefix(std::min(content.size(), line.size() + 1));
        return line;
    };
    const std::string first_line = "receipt, line 2";
    WF_TRY(const auto json, read_json(std::string{take_line()} + "]}", first_line));
    if (!json.is_object() || json.size() != 4 || !json.contains("receiver") ||
        !json["receiver"].is_object() || !is_text(json["receiver"], "id") ||
        !is_text(json["receiver"], "name") || !is_text(json["receiver"], "made") ||
        !is_text(json, "bundle") || !is_text(json, "made")) {
        return bad_input(first_line, "", "it says which device received which bundle, and when");
    }
    Receipt receipt;
    WF_TRY(receipt.receiver.id, parse_id(json["receiver"]["id"].get_ref<const std::string&>(), first_line));
    receipt.receiver.name = printable(json["receiver"]["name"].get_ref<const std::string&>(), 256);
    WF_TRY(receipt.receiver.made,
           parse_iso8601(json["receiver"]["made"].get_ref<const std::string&>(), first_line));
    receipt.bundle = json["bundle"];
    WF_TRY(receipt.made, parse_iso8601(json["made"].get_ref<const std::string&>(), first_line));
    while (!content.empty()) {
        auto line = take_line();
        if (line == "]}") {
            break;
        }
        if (line.ends_with(",")) {
            line.remove_suffix(1);
        }
        WF_TRY(auto run, run_of(line, "receipt, run " + std::to_string(receipt.runs.size() + 1)));
        receipt.runs.push_back(std::move(run));
    }
    if (!content.empty()) {
        return bad_input("receipt", content.substr(0, 40), "it does not end as it should");
    }
    return receipt;
}

/// The runs of a bundle, whose every entry must be here.
Result<std::vector<Run>> runs_here(Statements& sql, BundleReader& reader) {
    std::map<std::pair<std::string, std::int64_t>, Hash> entries;
    for (;;) {
        WF_TRY(const auto entry, reader.next());
        if (!entry) {
            break;
        }
        const auto row =
            sql("SELECT e.hash FROM entry AS e JOIN device AS d ON d.device = e.device WHERE d.id = ?1 AND "
                "e.seq = ?2 "
                "UNION ALL SELECT a.hash FROM aside AS a JOIN device AS d ON d.device = a.device "
                "WHERE d.id = ?1 AND a.seq = ?2");
        Binder{row}(entry->head.device)(entry->head.seq);
        if (!row.next_row() || hash_at(row, 0) != entry->hash) {
            return bad_input("receipt", "", "the bundle is not in the record file; import it first");
        }
        entries[{entry->head.device, entry->head.seq}] = entry->hash;
    }
    std::vector<Run> runs;
    for (const auto& [name, hash] : entries) {
        const auto& [device, seq] = name;
        if (runs.empty() || runs.back().device != device || runs.back().last != seq - 1) {
            runs.push_back({device, seq, seq, hash});
        }
        runs.back().last = seq;
        runs.back().hash = hash;
    }
    return runs;
}

std::int64_t device_key(Statements& sql, const BundleDevice& device) {
    const auto row = sql("SELECT device FROM device WHERE id = ?");
    Binder{row}(device.id);
    if (row.next_row()) {
        return number_at(row, 0);
    }
    const auto insert =
        sql("INSERT INTO device (id, name, made_unix_ms, made_utc_offset_min) VALUES (?, ?, ?, ?)");
    Binder{insert}(device.id)(device.name)(device.made);
    insert.run();
    return std::int64_t{sql.database().getLastInsertRowid()};
}

/// All of a run is here as the receiver has it.
bool is_here(Statements& sql, const Run& run, std::int64_t& device) {
    const auto row = sql(R"sql(
        WITH here (device, seq, hash) AS (
            SELECT e.device, e.seq, e.hash FROM entry AS e JOIN device AS d ON d.device = e.device
                WHERE d.id = ?1 AND e.seq BETWEEN ?2 AND ?3
            UNION ALL SELECT a.device, a.seq, a.hash FROM aside AS a JOIN device AS d ON d.device = a.device
                WHERE d.id = ?1 AND a.seq BETWEEN ?2 AND ?3)
        SELECT device, count(*), (SELECT hash FROM here WHERE seq = ?3) FROM here)sql");
    Binder{row}(run.device)(run.first)(run.last);
    if (!row.next_row() || number_at(row, 1) != run.last - run.first + 1 || hash_at(row, 2) != run.hash) {
        return false;
    }
    device = number_at(row, 0);
    return true;
}

Result<ReceiptRead> noted(Statements& sql, const Receipt& receipt) {
    ReceiptRead read{receipt.receiver.id};
    const auto receiver = device_key(sql, receipt.receiver);
    for (const auto& run : receipt.runs) {
        std::int64_t device = 0;
        if (!is_here(sql, run, device)) {
            return bad_input("receipt", run.device + " " + std::to_string(run.first),
                             "it acknowledges entries that are not here, or not the same; nothing was marked "
                             "as delivered");
        }
        read.entries += run.last - run.first + 1;
        const auto insert = sql(R"sql(
            INSERT OR IGNORE INTO delivered (receiver, device, seq)
                SELECT ?1, device, seq FROM entry WHERE device = ?2 AND seq BETWEEN ?3 AND ?4
                UNION ALL SELECT ?1, device, seq FROM aside WHERE device = ?2 AND seq BETWEEN ?3 AND ?4)sql");
        Binder{insert}(receiver)(device)(run.first)(run.last);
        insert.run();
        read.marked += sql.database().getChanges();
    }
    return read;
}

}  // namespace

Result<void> Store::write_receipt(std::string_view bundle, const std::filesystem::path& file) const {
    const std::string item = "receipt " + file.string();
    WF_TRY(const auto text, d_->read([&](Statements& sql) -> Result<std::string> {
        WF_TRY(const auto unpacked, unsealed(bundle, "wetfront bundle"));
        WF_TRY(auto reader, BundleReader::begin(unpacked.content));
        Receipt receipt;
        receipt.bundle = unpacked.sha256;
        receipt.made = d_->clock.wall_now();
        WF_TRY(receipt.runs, runs_here(sql, reader));
        const auto row = sql("SELECT name, made_unix_ms, made_utc_offset_min FROM device WHERE id = ?");
        Binder{row}(d_->device);
        if (row.next_row()) {
            receipt.receiver = {d_->device, text_at(row, 0), time_at(row, 1)};
        }
        return text_of(receipt);
    }));
    return guarded(item, [&] { return write_file(file, text, IfThere::replace, item); });
}

Result<ReceiptRead> Store::read_receipt(std::string_view text) {
    WF_TRY(const auto file, unsealed(text, format));
    WF_TRY(const auto receipt, receipt_of(file.content));
    if (receipt.receiver.id == d_->device) {
        return bad_input("receipt", d_->device.text, "it is this device's own; the sender reads it");
    }
    ReceiptRead read;
    WF_CHECK(d_->write([&](const Pen& pen) -> Result<void> {
        WF_TRY(read, noted(pen.sql, receipt));
        return boost::outcome_v2::success();
    }));
    return read;
}

}  // namespace wetfront
