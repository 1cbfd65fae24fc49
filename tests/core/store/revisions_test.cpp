// SPDX-License-Identifier: Apache-2.0
#include "store/revisions.h"

#include <gtest/gtest.h>

#include <random>

#include "records/record_text.h"
#include "samples.h"

namespace wetfront::test {
namespace {

class RevisionsTest : public StoreTest {};

/// One edit as a form makes it, drawn at random.
void edit(Visit& visit, std::mt19937& random) {
    const auto draw = [&](std::size_t below) { return random() % below; };
    const std::vector<const char*> texts{"", "valve / pipe", "~0 ~1 \"quoted\" \\", "später, 87 °F",
                                         "{\"op\":\"x\"}"};
    const auto text = [&] { return std::string{texts[draw(texts.size())]} + std::to_string(draw(1000)); };
    switch (draw(7)) {
        case 0:
            if (visit.open_points.size() < 40) {
                visit.open_points.insert(visit.open_points.begin() +
                                             static_cast<std::ptrdiff_t>(draw(visit.open_points.size() + 1)),
                                         text());
            }
            break;
        case 1:
            if (!visit.open_points.empty()) {
                visit.open_points.erase(visit.open_points.begin() +
                                        static_cast<std::ptrdiff_t>(draw(visit.open_points.size())));
            }
            break;
        case 2:
            visit.conditions.outside_dry_bulb =
                entered<Temperature>((std::to_string(60 + draw(50)) + " degF").c_str());
            break;
        case 3:
            visit.conditions.outside_dry_bulb = std::nullopt;
            break;
        case 4:
            visit.conditions.ph = static_cast<double>(draw(140)) / 10.0;
            break;
        case 5:
            visit.persons = {{.name = text(), .role = text()}, {.name = text(), .role = text()}};
            break;
        default:
            visit.agreement.agreed_with = text();
    }
}

TEST_F(RevisionsTest, every_state_of_a_hundred_random_edits_is_read_back_equal) {
    std::mt19937 random{20260701};
    std::vector<Visit> states{sample_visit()};
    {
        auto store = open_with_visit();
        while (states.size() < 100) {
            auto visit = states.back();
            edit(visit, random);
            succeed(store.save(visit));
            if (visit != states.back()) {
                states.push_back(visit);
            }
            ASSERT_EQ(value_of(store.visit(visit.id)), visit) << "after " << states.size() << " states";
        }
        EXPECT_EQ(value_of(store.revision_of(Id{"visit-1"})), 100);
    }
    SQLite::Database db{file};
    store_detail::Statements sql{db};
    SQLite::Statement rows{db, "SELECT id FROM revision WHERE kind = 'visit' ORDER BY number"};
    for (std::size_t i = 0; i < states.size(); ++i) {
        ASSERT_TRUE(rows.executeStep()) << i;
        const auto document = store_detail::document_at<nlohmann::json>(sql, store_detail::text_at(rows, 0));
        EXPECT_EQ(value_of(parse_visit(document.dump())), states[i]) << "revision " << i + 1;
    }
    EXPECT_FALSE(rows.executeStep());
}

TEST_F(RevisionsTest, every_thirty_second_revision_is_whole_and_those_between_hold_their_difference) {
    {
        auto store = open_with_visit();
        auto visit = sample_visit();
        for (int i = 2; i <= 70; ++i) {
            visit.agreement.agreed_with = "person " + std::to_string(i);
            succeed(store.save(visit));
        }
    }
    SQLite::Database db{file};
    SQLite::Statement rows{
        db, "SELECT number, body FROM revision WHERE kind = 'visit' AND whole ORDER BY number"};
    std::string whole;
    while (rows.executeStep()) {
        whole += std::to_string(store_detail::number_at(rows, 0)) + " ";
    }
    EXPECT_EQ(whole, "1 33 65 ");
    EXPECT_EQ(db.execAndGet("SELECT body FROM revision WHERE kind = 'visit' AND number = 40").getString(),
              R"([{"op":"replace","path":"/agreement/agreed_with","value":"person 40"}])");
    EXPECT_EQ(db.execAndGet("SELECT body ->> '$[0].op' || (body ->> '$[0].path') || json_array_length(body) "
                            "FROM revision WHERE kind = 'visit' AND number = 33")
                  .getString(),
              "replace1");
}

TEST_F(RevisionsTest, a_difference_longer_than_the_state_is_not_kept) {
    {
        auto store = open_with_visit();
        auto visit = sample_visit();
        visit.open_points = {"a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l"};
        succeed(store.save(visit));
        visit.open_points.erase(visit.open_points.begin());  // every later item moves
        succeed(store.save(visit));
        EXPECT_EQ(value_of(store.visit(Id{"visit-1"})), visit);
    }
    SQLite::Database db{file};
    EXPECT_EQ(db.execAndGet("SELECT whole FROM revision WHERE kind = 'visit' AND number = 3").getInt(), 1);
}

TEST_F(RevisionsTest, of_two_states_with_the_same_parent_both_are_kept) {
    { const auto store = open_with_visit(); }
    {
        SQLite::Database db{file, SQLite::OPEN_READWRITE};
        db.exec(R"(
            INSERT INTO device (id, name, made_unix_ms, made_utc_offset_min) VALUES ('other', 'other', 0, 0);
            INSERT INTO entry (device, seq, unix_ms, utc_offset_min) VALUES (2, 5, 0, 0), (2, 9, 0, 0);
            INSERT INTO revision (entry, id, kind, record, parent, number, whole, body, name)
                SELECT 4, 'left', 'farm', record, id, 2, 0, '[]', 'left' FROM revision WHERE kind = 'farm';
            INSERT INTO revision (entry, id, kind, record, parent, number, whole, body, name)
                SELECT 5, 'right', 'farm', record, parent, 2, 0, '[]', 'right' FROM revision WHERE id = 'left')");
        EXPECT_EQ(db.execAndGet(
                        "SELECT group_concat(id) FROM (SELECT id FROM head WHERE kind = 'farm' ORDER BY id)")
                      .getString(),
                  "left,right");
    }
    EXPECT_EQ(value_of(open().farm(Id{"farm-1"})), sample_farm());
}

}  // namespace
}  // namespace wetfront::test
