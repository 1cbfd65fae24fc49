// SPDX-License-Identifier: Apache-2.0
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>

#include "samples.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;
using namespace std::string_view_literals;

class SheetsTest : public StoreTest {
protected:
    static Visit signed_visit() {
        auto visit = sample_visit();
        visit.signatures = {sample_signature()};
        return visit;
    }
};

constexpr auto pdf = "%PDF-1.7\n\0\xFF\x80 bytes of any kind"sv;

TEST_F(SheetsTest, a_kept_sheet_comes_back_byte_for_byte_with_its_hash_and_time) {
    {
        auto store = open_with_visit();
        EXPECT_FALSE(value_of(store.signed_sheet(Id{"visit-1"})));
        succeed(store.keep_sheet(signed_visit(), pdf));
    }
    const auto store = open();
    EXPECT_TRUE(value_of(store.visit(Id{"visit-1"})).is_signed()) << "signed and kept at once";
    const auto sheet = value_of(store.signed_sheet(Id{"visit-1"}));
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->pdf, pdf);
    // printf '%PDF-1.7\n\0\377\200 bytes of any kind' | sha256sum
    EXPECT_EQ(sheet->sha256, "3dad0509921c5d7f9de7eaace55ece37ca9a1eb3619bb3748aba8ae49dcf4091");
    EXPECT_EQ(sheet->kept_at, clock.wall_now());
}

// The revision is a patch (RFC 6902) on the unsigned visit.
TEST_F(SheetsTest, a_drawn_signature_is_kept_stroke_by_stroke) {
    auto visit = signed_visit();
    visit.signatures[0].drawn = {{{{212, 480}, {230, 455}, {2500, 1000}}}, {{{7, 0}}}};
    {
        auto store = open_with_visit();
        succeed(store.keep_sheet(visit, pdf));
    }
    auto store = open();
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})).signatures, visit.signatures);
    auto redrawn = visit;
    redrawn.signatures[0].drawn[0].points[0].x += 1;
    EXPECT_THAT(error_of(store.save(redrawn)), HasSubstr("frozen"));
}

TEST_F(SheetsTest, a_signature_that_could_not_be_read_back_is_refused) {
    auto store = open_with_visit();
    auto visit = signed_visit();
    visit.signatures[0].drawn = {{{{5, 5}, {6, 6}}}};
    EXPECT_THAT(error_of(store.keep_sheet(visit, pdf)), HasSubstr("too short"));
    EXPECT_FALSE(value_of(store.visit(Id{"visit-1"})).is_signed());
}

TEST_F(SheetsTest, the_same_sheet_again_adds_nothing_and_another_is_refused) {
    {
        auto store = open_with_visit();
        succeed(store.keep_sheet(signed_visit(), pdf));
        succeed(store.keep_sheet(signed_visit(), pdf));
        EXPECT_THAT(error_of(store.keep_sheet(signed_visit(), "%PDF-other")), HasSubstr("stays as it was"));
        EXPECT_EQ(value_of(store.signed_sheet(Id{"visit-1"}))->pdf, pdf);
    }
    SQLite::Database db{file, SQLite::OPEN_READWRITE};
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM entry").getInt(), 5);
    EXPECT_THROW(db.exec("UPDATE sheet SET pdf = x'00'"), SQLite::Exception);
    EXPECT_THROW(db.exec("DELETE FROM sheet"), SQLite::Exception);
}

TEST_F(SheetsTest, an_open_visit_and_bytes_that_are_no_pdf_are_refused_and_nothing_is_signed) {
    auto store = open_with_visit();
    EXPECT_THAT(error_of(store.keep_sheet(sample_visit(), pdf)), HasSubstr("when it is signed"));
    EXPECT_THAT(error_of(store.keep_sheet(signed_visit(), "")), HasSubstr("PDF"));
    EXPECT_THAT(error_of(store.keep_sheet(signed_visit(), "<html>")), HasSubstr("PDF"));
    auto other_house = signed_visit();
    other_house.started.unix_ms += 1;
    EXPECT_THAT(error_of(store.keep_sheet(other_house, pdf)), HasSubstr("keeps its house"));
    EXPECT_FALSE(value_of(store.visit(Id{"visit-1"})).is_signed());
    EXPECT_FALSE(value_of(store.signed_sheet(Id{"visit-1"})));
}

TEST_F(SheetsTest, a_visit_that_was_signed_without_one_can_be_given_its_sheet) {
    auto store = open_with_visit();
    succeed(store.save(signed_visit()));
    EXPECT_FALSE(value_of(store.signed_sheet(Id{"visit-1"})));
    succeed(store.keep_sheet(signed_visit(), pdf));
    EXPECT_TRUE(value_of(store.signed_sheet(Id{"visit-1"})));
}

}  // namespace
}  // namespace wetfront::test
