// SPDX-License-Identifier: Apache-2.0
#include "sheet/sheet_file_name.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace wetfront::test {
namespace {

VisitFile named(const std::string& farm, const std::string& house, const std::string& id) {
    VisitFile file;
    file.farm.name = farm;
    file.house.name = house;
    file.visit.id = Id{id};
    file.visit.started = parse_iso8601("2026-07-07T10:00:00-05:00", "day").value();
    return file;
}

TEST(SheetFileNameTest, a_sheet_is_named_by_farm_house_day_and_id) {
    const auto file = named("Larkrise", "House Alder", "0197-ab");
    EXPECT_EQ(sheet_file_name(file, SheetKind::commissioning), "Larkrise_House-Alder_2026-07-07_0197-ab.pdf");
    EXPECT_EQ(sheet_file_name(file, SheetKind::summary),
              "Larkrise_House-Alder_2026-07-07_0197-ab.summary.pdf");
}

TEST(SheetFileNameTest, letters_with_marks_stay_and_signs_of_any_other_sort_go) {
    const auto name = sheet_file_name(named("Granja Ñandú", "Galpón × 3 \xE6\x9C\xA8 \xFF\x80", "x"),
                                      SheetKind::commissioning);
    EXPECT_EQ(name, "Granja-Ñandú_Galpón-3_2026-07-07_x.pdf");
}

TEST(SheetFileNameTest, no_name_leads_out_of_the_folder) {
    for (const std::string evil : {"../../etc/passwd", "/etc/x", "..", ".", "a\\b", "C:\\x", "-rf", "~", "",
                                   "\n\r\t", "name\0hidden", "CON", "\xE2\x80\xAEgnp.exe"}) {
        const auto name = sheet_file_name(named(evil, evil, "x"), SheetKind::commissioning);
        EXPECT_EQ(name.find_first_of("/\\:*?\"<>|\n\r\t~"), std::string::npos) << name;
        EXPECT_EQ(name.find(".."), std::string::npos) << name;
        EXPECT_NE(name.front(), '-') << name;
        EXPECT_NE(name.front(), '.') << name;
        EXPECT_TRUE(is_utf8(name)) << name;
    }
}

// POSIX NAME_MAX; 20 bytes for what keep_file() appends while it writes.
TEST(SheetFileNameTest, the_longest_names_and_ids_fit_a_file_system) {
    std::string letters;
    for (int i = 0; i < 150; ++i) {
        letters += "ñ";
    }
    const auto name = sheet_file_name(named(letters, letters, std::string(64, 'A')), SheetKind::summary);
    EXPECT_LE(name.size() + 20, 255U);
    EXPECT_TRUE(is_utf8(name));
}

TEST(SheetFileNameTest, no_two_visits_share_a_name_where_capitals_count_as_small) {
    const std::vector<VisitFile> alike{named("F", "H", "x"),
                                       named("F", "H", "X"),
                                       named("F", "H", "2026-07-07-x"),
                                       named("F", "H 2026-07-07", "x"),
                                       named("F-H", "", "x"),
                                       named("F", "H", "x-summary")};
    std::set<std::string> names;
    for (const auto& file : alike) {
        for (const auto kind : {SheetKind::commissioning, SheetKind::summary}) {
            auto name = sheet_file_name(file, kind);
            std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::tolower(c); });
            names.insert(name);
        }
    }
    EXPECT_EQ(names.size(), 2 * alike.size());
}

}  // namespace
}  // namespace wetfront::test
