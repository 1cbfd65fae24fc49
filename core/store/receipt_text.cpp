// SPDX-License-Identifier: Apache-2.0
#include "store/receipt_text.h"

#include <algorithm>
#include <limits>
#include <nlohmann/json.hpp>

#include "records/json_text.h"

namespace wetfront::store_detail {
namespace {

bool is_text(const Json& json, const char* key) {
    return json.contains(key) && json[key].is_string();
}

Result<ReceivedRun> run_of(std::string_view line, const std::string& item) {
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
    WF_TRY(const auto device, parse_id(json["device"].get_ref<const std::string&>(), item));
    return ReceivedRun{device.text, json["first"], json["last"], *hash};
}

}  // namespace

std::string receipt_content(const Receipt& receipt) {
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
    return text + "\n]}\n";
}

Result<Receipt> parse_receipt(std::string_view content) {
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
    bool ends = false;
    while (!content.empty() && !ends) {
        auto line = take_line();
        ends = line == "]}";
        if (ends) {
            continue;
        }
        if (line.ends_with(",")) {
            line.remove_suffix(1);
        }
        WF_TRY(auto run, run_of(line, "receipt, run " + std::to_string(receipt.runs.size() + 1)));
        receipt.runs.push_back(std::move(run));
    }
    if (!content.empty() || !ends) {
        return bad_input("receipt", content.substr(0, 40), "it does not end as it should");
    }
    return receipt;
}

}  // namespace wetfront::store_detail
