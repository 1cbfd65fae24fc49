// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "records/photo.h"
#include "store/store_private.h"
#include "store/stored_records.h"

namespace wetfront {

using store_detail::Bytes;
using store_detail::Hash;
using store_detail::in_hex;
using store_detail::Pen;
using store_detail::sha256;
using store_detail::Statements;
using store_detail::value;

namespace {

Bytes bytes_of(const Hash& hash) {
    return {std::string(hash.begin(), hash.end())};
}

bool is_kept(Statements& sql, const Id& visit, const std::string& hash) {
    const auto row = sql("SELECT 1 FROM picture WHERE visit = ? AND lower(hex(sha256)) = ?");
    store_detail::Binder{row}(visit.text)(hash);
    return row.next_row();
}

}  // namespace

Result<void> Store::keep_picture(const Visit& visit, std::string_view jpeg) {
    if (!is_photo(jpeg)) {
        return bad_input("photo", std::to_string(jpeg.size()) + " bytes", "a JPEG picture of at most 1 MiB");
    }
    const auto hash = sha256(jpeg);
    if (std::ranges::find(visit.photos, in_hex(hash), &Photo::sha256) == visit.photos.end()) {
        return bad_input("photo", in_hex(hash), "one that the visit names");
    }
    return d_->write([&](const Pen& pen) -> Result<void> {
        WF_CHECK(store_detail::put(pen, visit));
        if (!is_kept(pen.sql, visit.id, in_hex(hash))) {
            pen.write(
                "picture",
                {{"visit", value(visit.id)}, {"sha256", bytes_of(hash)}, {"jpeg", Bytes{std::string{jpeg}}}});
        }
        return boost::outcome_v2::success();
    });
}

Result<std::optional<std::string>> Store::picture(const std::string& hash) const {
    return d_->read([&](Statements& sql) -> Result<std::optional<std::string>> {
        const auto row = sql("SELECT jpeg FROM picture WHERE lower(hex(sha256)) = ? LIMIT 1");
        store_detail::Binder{row}(hash);
        if (!row.next_row()) {
            return std::optional<std::string>{};
        }
        auto jpeg = store_detail::text_at(row, 0);
        if (in_hex(sha256(jpeg)) != hash) {
            return storage_error("photo " + hash, "it is not what was added: its hash differs",
                                 "the file is damaged; go back to a good copy");
        }
        return std::optional{std::move(jpeg)};
    });
}

}  // namespace wetfront
