// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include "complete_visit.h"
#include "sheet_reader.h"

namespace wetfront::test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

/// A visit of two banks with a photo of the second and one of the house.
class SheetPhotosTest : public testing::Test {
protected:
    SheetPhotosTest() {
        file_.visit.photos.resize(2);
        file_.visit.photos[0].sha256 = std::string(64, 'a');
        file_.visit.photos[0].bank = file_.house.banks[1].id;
        file_.visit.photos[0].note = "scale at the far end";
        file_.visit.photos[1].sha256 = std::string(64, 'b');
    }
    /// With the bytes of the first photo only.
    [[nodiscard]] SheetPhotos printed() const {
        const PhotoBytes bytes{{std::string(64, 'a'), "bytes of the first"}};
        const MadeSheet made{file_};
        const auto content = commissioning_sheet({made.file,
                                                  made.timings,
                                                  made.advice,
                                                  made.found,
                                                  made.left,
                                                  1,
                                                  {1'783'000'000'000, -300},
                                                  {},
                                                  {},
                                                  &bytes});
        for (const auto& block : content.blocks) {
            if (const auto* photos = std::get_if<SheetPhotos>(&block)) {
                return *photos;
            }
        }
        return {};
    }

    VisitFile file_ = complete_visit(2);
};

TEST_F(SheetPhotosTest, each_photo_has_its_number_place_and_note_and_its_bytes_where_they_are_at_hand) {
    const auto photos = printed().pictures;
    ASSERT_THAT(photos, SizeIs(2));
    EXPECT_EQ(MadeSheet::english(photos[0].caption), "Photo 1. Bank 2. scale at the far end");
    EXPECT_EQ(photos[0].jpeg, "bytes of the first");
    EXPECT_EQ(MadeSheet::english(photos[1].caption), "Photo 2. House");
    EXPECT_EQ(photos[1].jpeg, "");
}

TEST_F(SheetPhotosTest, a_photo_of_a_finding_says_what_was_found) {
    file_.visit.photos[0].finding = "base-below-fill";
    const MadeSheet made{file_};
    const auto shown = std::ranges::find_if(made.found, [&](const Finding& finding) {
        return finding.rule == "base-below-fill" && finding.bank == file_.house.banks[1].id;
    });
    ASSERT_NE(shown, made.found.end());
    EXPECT_THAT(MadeSheet::english(printed().pictures[0].caption),
                HasSubstr(MadeSheet::english(shown->message)));
}

TEST_F(SheetPhotosTest, a_finding_that_is_gone_is_not_told_any_more) {
    file_.visit.photos[0].finding = "no-such-rule";
    EXPECT_EQ(MadeSheet::english(printed().pictures[0].caption), "Photo 1. Bank 2. scale at the far end");
}

TEST_F(SheetPhotosTest, a_visit_without_photos_has_no_such_part) {
    file_.visit.photos.clear();
    EXPECT_THAT(MadeSheet{file_}.below("Photos"), IsEmpty());
}

}  // namespace
}  // namespace wetfront::test
