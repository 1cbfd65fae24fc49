// SPDX-License-Identifier: Apache-2.0
#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>

#include "samples.h"
#include "store/verify.h"

namespace wetfront::test {
namespace {

using ::testing::HasSubstr;

class PicturesTest : public StoreTest {
protected:
    static Visit visit_with_photo() {
        auto visit = sample_visit();
        visit.photos = {sample_photo()};
        return visit;
    }
    [[nodiscard]] int kept() const {
        return SQLite::Database{file}.execAndGet("SELECT count(*) FROM picture").getInt();
    }
};

TEST_F(PicturesTest, a_photo_comes_back_byte_for_byte_with_what_it_shows) {
    {
        auto store = open_with_visit();
        succeed(store.keep_picture(visit_with_photo(), sample_jpeg));
    }
    const auto store = open();
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})).photos, std::vector{sample_photo()});
    EXPECT_EQ(value_of(store.picture(sample_photo().sha256)), std::string{sample_jpeg});
}

TEST_F(PicturesTest, the_same_photo_again_adds_nothing) {
    {
        auto store = open_with_visit();
        succeed(store.keep_picture(visit_with_photo(), sample_jpeg));
        const auto entries = value_of(store.content()).entries;
        succeed(store.keep_picture(visit_with_photo(), sample_jpeg));
        EXPECT_EQ(value_of(store.content()).entries, entries);
    }
    EXPECT_EQ(kept(), 1);
}

TEST_F(PicturesTest, a_photo_that_was_undone_is_there_again_when_it_is_redone) {
    auto store = open_with_visit();
    succeed(store.keep_picture(visit_with_photo(), sample_jpeg));
    EXPECT_TRUE(value_of(store.undo(Id{"visit-1"})));
    EXPECT_TRUE(value_of(store.visit(Id{"visit-1"})).photos.empty());
    EXPECT_TRUE(value_of(store.redo(Id{"visit-1"})));
    EXPECT_EQ(value_of(store.visit(Id{"visit-1"})).photos, std::vector{sample_photo()});
    EXPECT_EQ(value_of(store.picture(sample_photo().sha256)), std::string{sample_jpeg});
}

TEST_F(PicturesTest, a_photo_that_is_not_here_is_no_error) {
    auto store = open_with_visit();
    succeed(store.save(visit_with_photo()));
    EXPECT_EQ(value_of(store.picture(sample_photo().sha256)), std::nullopt);
}

TEST_F(PicturesTest, bytes_that_are_no_photo_and_photos_that_the_visit_does_not_name_are_refused) {
    auto store = open_with_visit();
    EXPECT_THAT(error_of(store.keep_picture(visit_with_photo(), "GIF89a")), HasSubstr("JPEG"));
    const std::string large =
        std::string{sample_jpeg.substr(0, 4)} + std::string(1024 * 1024, 'x') + "\xFF\xD9";
    EXPECT_THAT(error_of(store.keep_picture(visit_with_photo(), large)), HasSubstr("1 MiB"));
    EXPECT_THAT(error_of(store.keep_picture(sample_visit(), sample_jpeg)), HasSubstr("the visit names"));
    EXPECT_TRUE(value_of(store.visit(Id{"visit-1"})).photos.empty());
}

TEST_F(PicturesTest, a_signed_visit_takes_no_photo) {
    auto store = open_with_visit();
    auto visit = sample_visit();
    visit.signatures = {sample_signature()};
    succeed(store.save(visit));
    visit.photos = {sample_photo()};
    EXPECT_THAT(error_of(store.keep_picture(visit, sample_jpeg)), HasSubstr("frozen"));
    EXPECT_EQ(value_of(store.picture(sample_photo().sha256)), std::nullopt);
}

TEST_F(PicturesTest, one_changed_byte_of_a_photo_is_told) {
    {
        auto store = open_with_visit();
        succeed(store.keep_picture(visit_with_photo(), sample_jpeg));
    }
    {
        SQLite::Database db{file, SQLite::OPEN_READWRITE};
        EXPECT_THROW(db.exec("UPDATE picture SET jpeg = x'FFD8FFD9'"), SQLite::Exception);
        EXPECT_THROW(db.exec("DELETE FROM picture"), SQLite::Exception);
        const auto rule =
            db.execAndGet("SELECT sql FROM sqlite_schema WHERE name = 'picture_is_not_changed'").getString();
        db.exec("DROP TRIGGER picture_is_not_changed");
        db.exec("UPDATE picture SET jpeg = x'FFD8FF00FFD9'");
        db.exec(rule);
    }
    const auto verdict = value_of(verify_store(file, clock));
    std::string wrong;
    for (const auto& check : verdict.checks) {
        if (check.wrong > 0) {
            wrong += check.name + ": " + check.first_wrong + "\n";
        }
    }
    EXPECT_THAT(wrong, HasSubstr("photos: "));
    EXPECT_THAT(wrong, HasSubstr("a photo of visit visit-1 is not the one that was added"));
    EXPECT_THAT(error_of(open(OpenMode::read_only).picture(sample_photo().sha256)),
                HasSubstr("hash differs"));
}

}  // namespace
}  // namespace wetfront::test
