// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <iterator>

#include "cli_run.h"
#include "demo/demo.h"
#include "store/store.h"

namespace wetfront::test {
namespace {

constexpr std::string_view jpeg{"\xFF\xD8\xFF\xE0 not to be drawn \0\xFF\xD9", 24};
// printf '\377\330\377\340 not to be drawn \0\377\331' | sha256sum
constexpr const char* jpeg_hash = "6b6c2c5d61701b9c5abe79bd7740d8117bfcc7a137860a836d8ad7ed2c173512";

/// The demo's record file, and a reader of pictures that gives these bytes for any file called scale.jpg.
class StorePhotosTest : public testing::Test {
protected:
    StorePhotosTest() {
        auto store = Store::open(records_, clock_).value();
        EXPECT_TRUE(fill_store(store));
        for (const auto& file : demo_visits()) {
            if (file.visit.is_signed()) {
                signed_visit_ = file.visit.id.text;
            } else {
                open_visit_ = file.visit.id.text;
                bank_ = file.house.banks.front().id.text;
            }
        }
    }
    [[nodiscard]] CliRun photo(std::vector<std::string> arguments, bool with_reader = true) {
        arguments.insert(arguments.begin(), {"store", "photo", "--store", records_});
        std::istringstream in;
        std::ostringstream out;
        std::ostringstream err;
        PhotoTaker take;
        if (with_reader) {
            take = [this](const std::string& file, bool keep) -> Result<std::string> {
                kept_camera_data_ = keep;
                return file == "scale.jpg" ? Result<std::string>{std::string{jpeg}}
                                           : Result<std::string>{bad_input(file, "no picture", "a photo")};
            };
        }
        const auto status = run_cli(arguments, {in, out, err, clock_, {}, take});
        return {static_cast<int>(status), out.str(), err.str()};
    }
    [[nodiscard]] std::vector<Photo> photos() const {
        return Store::open(records_, clock_).value().visit(Id{open_visit_}).value().photos;
    }

    TemporaryFolder folder_;
    FakeClock clock_;
    std::string records_ = folder_.file("records.db");
    std::string open_visit_;
    std::string signed_visit_;
    std::string bank_;
    bool kept_camera_data_ = false;
};

TEST_F(StorePhotosTest, a_photo_is_put_to_a_bank_and_comes_out_byte_for_byte) {
    const auto added = photo({open_visit_, "scale.jpg", "--bank", bank_, "--finding", "pump-never-rests",
                              "--note", "far end", "--json"});
    ASSERT_EQ(added.status, 0) << added.err;
    EXPECT_EQ(added.json().at("sha256"), jpeg_hash);
    EXPECT_FALSE(kept_camera_data_);
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos()[0].bank.text, bank_);
    EXPECT_EQ(photos()[0].finding, "pump-never-rests");
    EXPECT_EQ(photos()[0].added, clock_.wall_now());

    const auto written = run({"store", "photos", open_visit_, "--to", folder_.file(""), "--store", records_});
    EXPECT_EQ(written.status, 0) << written.err;
    EXPECT_NE(written.out.find(": far end"), std::string::npos) << written.out;
    std::ifstream stream{folder_.file(std::string{jpeg_hash} + ".jpg"), std::ios::binary};
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>{stream}, {}), jpeg);
}

TEST_F(StorePhotosTest, what_the_camera_wrote_is_kept_only_when_asked) {
    EXPECT_EQ(photo({open_visit_, "scale.jpg", "--keep-camera-data"}).status, 0);
    EXPECT_TRUE(kept_camera_data_);
}

TEST_F(StorePhotosTest, what_cannot_be_a_photo_of_the_visit_is_refused_and_nothing_is_kept) {
    expect_refused(photo({open_visit_, "notes.txt"}), "no picture");
    expect_refused(photo({open_visit_, "scale.jpg", "--bank", "no-such-bank"}), "no bank");
    expect_refused(photo({signed_visit_, "scale.jpg"}), "frozen");
    expect_refused(photo({"no-such-visit", "scale.jpg"}), "no-such-visit");
    expect_refused(photo({open_visit_, "scale.jpg"}, false), "reads no pictures");
    EXPECT_TRUE(photos().empty());
}

TEST_F(StorePhotosTest, the_same_photo_twice_is_refused) {
    EXPECT_EQ(photo({open_visit_, "scale.jpg"}).status, 0);
    expect_refused(photo({open_visit_, "scale.jpg"}), "does not have yet");
    EXPECT_EQ(photos().size(), 1U);
}

}  // namespace
}  // namespace wetfront::test
