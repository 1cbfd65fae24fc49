// SPDX-License-Identifier: Apache-2.0
#include "sheet/sheet_file_name.h"

#include <algorithm>
#include <string_view>

namespace wetfront {
namespace {

constexpr std::size_t most_bytes_of_a_name = 40;

bool is_plain(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

/// U+00C0 to U+017F, but the signs of times and division: letters of the languages of Europe, all of two
/// bytes. RFC 3629.
bool is_latin_letter(std::string_view two) {
    const auto first = static_cast<unsigned char>(two[0]);
    const auto second = static_cast<unsigned char>(two[1]);
    const bool in_range = first >= 0xC3 && first <= 0xC5 && second >= 0x80 && second <= 0xBF;
    return in_range && !(first == 0xC3 && (second == 0x97 || second == 0xB7));
}

std::string name_part(std::string_view name) {
    std::string part;
    while (!name.empty() && part.size() < most_bytes_of_a_name) {
        std::size_t taken = 1;
        if (is_plain(name.front())) {
            part += name.front();
        } else if (name.size() > 1 && is_latin_letter(name.substr(0, 2)) &&
                   part.size() + 2 <= most_bytes_of_a_name) {
            taken = 2;
            part += name.substr(0, 2);
        } else if (!part.empty() && part.back() != '-') {
            part += '-';
        }
        name.remove_prefix(taken);
    }
    if (!part.empty() && part.back() == '-') {
        part.pop_back();
    }
    return part.empty() ? "unnamed" : part;
}

std::string id_part(const Id& id) {
    std::string part;
    for (const char c : id.text) {
        const bool capital = c >= 'A' && c <= 'Z';
        part += capital ? std::string{'_', static_cast<char>(c - 'A' + 'a')} : std::string{c};
    }
    return part;
}

}  // namespace

std::string sheet_file_name(const VisitFile& file, SheetKind kind) {
    return name_part(file.farm.name) + "_" + name_part(file.house.name) + "_" +
           local_date(file.visit.started) + "_" + id_part(file.visit.id) +
           (kind == SheetKind::summary ? ".summary.pdf" : ".pdf");
}

}  // namespace wetfront
