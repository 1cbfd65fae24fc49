// SPDX-License-Identifier: Apache-2.0
#include "store/store_private.h"
#include "store/stored_records.h"

namespace wetfront {

using store_detail::Bytes;
using store_detail::hash_at;
using store_detail::in_hex;
using store_detail::need_head;
using store_detail::Pen;
using store_detail::sha256;
using store_detail::Statements;
using store_detail::value;

namespace {

/// That of the state which is shown: a visit signed on two devices has two.
std::optional<SignedSheet> sheet_of(Statements& sql, const std::string& revision) {
    const auto row = sql(
        "SELECT s.pdf, s.sha256, e.unix_ms, e.utc_offset_min FROM sheet AS s JOIN entry AS e USING (entry) "
        "WHERE s.revision = ?");
    store_detail::Binder{row}(revision);
    if (!row.next_row()) {
        return std::nullopt;
    }
    return SignedSheet{store_detail::text_at(row, 0), in_hex(hash_at(row, 1)), store_detail::time_at(row, 2)};
}

}  // namespace

Result<void> Store::keep_sheet(const Visit& visit, std::string_view pdf) {
    if (!visit.is_signed()) {
        return bad_input("visit", visit.id.text, "its sheet is kept when it is signed");
    }
    if (!pdf.starts_with("%PDF-")) {
        return bad_input("sheet of visit " + visit.id.text, pdf.substr(0, 8), "a PDF");
    }
    return d_->write([&](const Pen& pen) -> Result<void> {
        WF_CHECK(store_detail::put(pen, visit));
        WF_TRY(const auto head, need_head(pen.sql, RecordKind::visit, visit.id));
        if (const auto kept = sheet_of(pen.sql, head.revision)) {
            if (kept->pdf != pdf) {
                return bad_input("sheet of visit " + visit.id.text, "",
                                 "it was kept when the visit was signed and stays as it was handed out");
            }
            return boost::outcome_v2::success();
        }
        const auto hash = sha256(pdf);
        pen.write("sheet", {{"visit", value(visit.id)},
                            {"revision", value(head.revision)},
                            {"sha256", Bytes{std::string(hash.begin(), hash.end())}},
                            {"pdf", Bytes{std::string{pdf}}}});
        return boost::outcome_v2::success();
    });
}

Result<std::optional<SignedSheet>> Store::signed_sheet(const Id& visit) const {
    return d_->read([&](Statements& sql) -> Result<std::optional<SignedSheet>> {
        WF_TRY(const auto head, need_head(sql, RecordKind::visit, visit));
        auto sheet = sheet_of(sql, head.revision);
        if (sheet && in_hex(sha256(sheet->pdf)) != sheet->sha256) {
            return storage_error("sheet of visit " + visit.text,
                                 "it is not what was signed: its hash differs",
                                 "the file is damaged; go back to a good copy");
        }
        return sheet;
    });
}

}  // namespace wetfront
