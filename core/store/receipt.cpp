// SPDX-License-Identifier: Apache-2.0
#include <map>

#include "store/receipt_text.h"
#include "store/store_private.h"
#include "store/written_file.h"

namespace wetfront {
namespace {

using namespace store_detail;

/// The runs of a bundle, whose every entry must be here.
Result<std::vector<ReceivedRun>> runs_here(Statements& sql, BundleReader& reader) {
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
    std::vector<ReceivedRun> runs;
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
bool is_here(Statements& sql, const ReceivedRun& run, std::int64_t& device) {
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
        return sealed(receipt_content(receipt), receipt_format);
    }));
    return guarded(item, [&] { return write_file(file, text, IfThere::replace, item); });
}

Result<ReceiptRead> Store::read_receipt(std::string_view text) {
    WF_TRY(const auto file, unsealed(text, receipt_format));
    WF_TRY(const auto receipt, parse_receipt(file.content));
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
