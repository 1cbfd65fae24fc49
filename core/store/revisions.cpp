// SPDX-License-Identifier: Apache-2.0
#include "store/revisions.h"

#include <stdexcept>

namespace wetfront::store_detail {
namespace {

using nlohmann::json;

json whole_patch(const json& document) {
    return json::array({{{"op", "replace"}, {"path", ""}, {"value", document}}});
}

struct Body {
    bool whole;
    std::string text;
};

Body body_of(const std::optional<json>& before, const json& document, int number) {
    Body whole{true, whole_patch(document).dump()};
    if (!before || number % whole_every == 1) {
        return whole;
    }
    Body change{false, json::diff(*before, document).dump()};
    return change.text.size() < whole.text.size() ? change : whole;
}

}  // namespace

std::optional<Head> head_of(Statements& sql, RecordKind kind, const Id& record) {
    const auto find =
        sql("SELECT id, number, house, started_unix_ms, started_utc_offset_min, signed, "
            "house_revision, farm_revision FROM head WHERE kind = ? AND record = ? "
            "ORDER BY signed DESC, number DESC, id DESC LIMIT 1");
    Binder{find}(enum_name(kind))(record);
    if (!find.next_row()) {
        return std::nullopt;
    }
    Head head;
    head.revision = text_at(find, 0);
    head.number = static_cast<int>(number_at(find, 1));
    if (kind == RecordKind::visit) {
        head.house = id_at(find, 2);
        head.started = time_at(find, 3);
        head.is_signed = flag_at(find, 5);
        head.house_revision = text_at(find, 6);
        head.farm_revision = text_at(find, 7);
    }
    return head;
}

template <class Tree>
Tree document_at(Statements& sql, const std::string& revision) {
    const auto rows =
        sql("WITH RECURSIVE chain (parent, number, whole, body) AS ("
            "SELECT parent, number, whole, body FROM revision WHERE id = ? UNION ALL "
            "SELECT r.parent, r.number, r.whole, r.body FROM chain AS c "
            "JOIN revision AS r ON r.id = c.parent WHERE c.whole = 0) "
            "SELECT body FROM chain ORDER BY number");
    Binder{rows}(revision);
    Tree document;
    bool any = false;
    while (rows.next_row()) {
        try {
            auto patch = Tree::parse(text_at(rows, 0));
            if (patch.size() == 1 && patch.at(0).at("op") == "replace" && patch.at(0).at("path") == "") {
                document = std::move(patch.at(0).at("value"));  // what patching would copy
            } else {
                document.patch_inplace(patch);
            }
        } catch (const json::exception&) {
            throw std::runtime_error{"revision " + revision + " cannot be read"};
        }
        any = true;
    }
    if (!any) {
        throw std::runtime_error{"revision " + revision + " is missing"};
    }
    return document;
}
template json document_at(Statements&, const std::string&);
template Json document_at(Statements&, const std::string&);

void add_revision(const Pen& pen, RecordKind kind, const Id& record, const std::optional<Head>& parent,
                  const json& document, const Columns& columns) {
    std::optional<json> before;
    if (parent) {
        before = document_at<json>(pen.sql, parent->revision);
        if (*before == document) {
            return;
        }
    }
    const int number = parent ? parent->number + 1 : 1;
    const auto body = body_of(before, document, number);
    const auto started = columns.started;
    pen.write("revision", {{"id", value(pen.ids.next())},
                           {"kind", value(enum_name(kind))},
                           {"record", value(record)},
                           {"parent", parent ? value(parent->revision) : Value{}},
                           {"number", value(number)},
                           {"whole", value(body.whole)},
                           {"body", value(body.text)},
                           {"name", value(columns.name)},
                           {"farm", value(columns.farm)},
                           {"house", value(columns.house)},
                           {"started_unix_ms", started ? value(started->unix_ms) : Value{}},
                           {"started_utc_offset_min", started ? value(started->utc_offset_minutes) : Value{}},
                           {"signed", value(columns.is_signed)},
                           {"replaces", value(columns.replaces)},
                           {"house_revision", value(columns.house_revision)},
                           {"farm_revision", value(columns.farm_revision)},
                           {"restores", value(columns.restores)}});
}

}  // namespace wetfront::store_detail
