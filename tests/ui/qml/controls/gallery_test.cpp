// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <QTest>

#include "ui_support/hand.h"
#include "ui_support/qml_window.h"

namespace wetfront::ui {
namespace {

constexpr double pixels_per_mm = 118 / 25.4;

/// What an item scrolls or is laid over with.
const QQuickItem* layer(const QQuickItem* item) {
    const QQuickItem* around = item->parentItem();
    while (around->parentItem() != nullptr && around->parentItem()->parentItem() != nullptr &&
           !around->clip()) {
        around = around->parentItem();
    }
    return around;
}

struct Shown {
    const char* page;
    QSize size;
};

/// Every control that there is, on a tablet's glass.
class GalleryTest : public testing::TestWithParam<Shown> {
protected:
    GalleryTest()
        : window_(QStringLiteral("import Wetfront.Gallery\nGallery { page: \"%1\" }")
                      .arg(QString::fromUtf8(GetParam().page)),
                  GetParam().size) {}

    std::vector<Heard> targets() {
        std::vector<Heard> all = hand_.everything();
        std::erase_if(all, [](const Heard& each) { return !each.can_be_pressed(); });
        return all;
    }

    QmlWindow window_;
    Hand hand_{window_.window()};
};

TEST_P(GalleryTest, what_can_be_pressed_measures_twelve_millimetres_each_way) {
    const std::vector<Heard> all = targets();
    ASSERT_FALSE(all.empty());
    for (const Heard& each : all) {
        // Half a pixel of rounding.
        EXPECT_GE(each.place().width(), 12 * pixels_per_mm - 0.5) << each.name.toStdString();
        EXPECT_GE(each.place().height(), 12 * pixels_per_mm - 0.5) << each.name.toStdString();
    }
}

TEST_P(GalleryTest, two_targets_are_two_millimetres_apart) {
    const std::vector<Heard> all = targets();
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t j = i + 1; j < all.size(); ++j) {
            const QRectF one = all[i].place();
            const QRectF other = all[j].place();
            const bool nested =
                all[i].item->isAncestorOf(all[j].item) || all[j].item->isAncestorOf(all[i].item);
            // An overlay lies on top of the page on purpose, and what is scrolled away lies under other
            // things.
            const bool same_layer = layer(all[i].item) == layer(all[j].item);
            if (nested || !same_layer) {
                continue;
            }
            const double across = std::max(one.left(), other.left()) - std::min(one.right(), other.right());
            const double down = std::max(one.top(), other.top()) - std::min(one.bottom(), other.bottom());
            // A pixel of rounding at each edge.
            EXPECT_GE(std::max(across, down), 2 * pixels_per_mm - 1)
                << all[i].name.toStdString() << " and " << all[j].name.toStdString();
        }
    }
}

TEST_P(GalleryTest, what_takes_the_keyboard_has_a_name) {
    std::vector<QQuickItem*> open = {window_.window().contentItem()};
    int seen = 0;
    while (!open.empty()) {
        const QQuickItem* const item = open.back();
        open.pop_back();
        for (QQuickItem* const child : item->childItems()) {
            open.push_back(child);
        }
        if (item->isVisible() && item->isEnabled() && item->activeFocusOnTab()) {
            ++seen;
            auto* const heard = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(item));
            ASSERT_NE(heard, nullptr);
            EXPECT_NE(heard->text(QAccessible::Name), "")
                << item->metaObject()->className() << " has no name";
        }
    }
    EXPECT_GT(seen, 0);
}

INSTANTIATE_TEST_SUITE_P(Pages, GalleryTest,
                         testing::Values(Shown{"buttons", QSize(1024, 600)},
                                         Shown{"fields", QSize(1024, 600)}, Shown{"boxes", QSize(1024, 600)},
                                         Shown{"pad", QSize(1024, 600)}, Shown{"reason", QSize(1024, 600)},
                                         Shown{"confirm", QSize(1024, 600)}, Shown{"busy", QSize(1024, 600)},
                                         Shown{"buttons", QSize(800, 1280)},
                                         Shown{"fields", QSize(800, 1280)}, Shown{"boxes", QSize(800, 1280)},
                                         Shown{"pad", QSize(800, 1280)}));

}  // namespace
}  // namespace wetfront::ui
