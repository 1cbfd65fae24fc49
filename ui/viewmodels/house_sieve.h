// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QStringList>
#include <array>
#include <vector>

#include "base/enum_names.h"
#include "store/store.h"
#include "trend/revisit.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Which houses the list shows.
enum class HousesShown { all, open, harm, fault, worsening, due };

}  // namespace wetfront::ui

/// Names in QML.
// clang-format off
template <> struct wetfront::EnumNames<wetfront::ui::HousesShown> { static constexpr std::array all{
    EnumName{ui::HousesShown::all, "all"}, EnumName{ui::HousesShown::open, "open"},
    EnumName{ui::HousesShown::harm, "harm"}, EnumName{ui::HousesShown::fault, "fault"},
    EnumName{ui::HousesShown::worsening, "worsening"}, EnumName{ui::HousesShown::due, "due"}}; };
// clang-format on

namespace wetfront::ui {

/// True if the answer needs the house's visits, which takes milliseconds a house.
[[nodiscard]] constexpr bool needs_visits(HousesShown shown) {
    return shown != HousesShown::all && shown != HousesShown::open;
}

/// Whether a house belongs to what is shown: `open` an open latest visit; `harm` and `fault` a finding on the
/// settings left at the latest visit (where none were entered, found), that bad or worse; `worsening` a trend
/// to worse wetting; `due` the next visit (trend/revisit.h) is due now, or there was none yet. A house that
/// cannot be read belongs to it.
[[nodiscard]] bool belongs(const HouseSummary& house, HousesShown shown, const Context& context);

/// When the house of that latest visit is to be visited again, by what was left there and by its trends.
[[nodiscard]] Revisit next_visit(const VisitFile& latest, bool worsening);

/// Words sought in houses as they are typed: every word of the question somewhere in names of house, farm or
/// customer; capitals and accents do not matter.
class HouseWords {
public:
    /// Reads the customers from the store; without them where it cannot be read.
    HouseWords(const std::vector<HouseSummary>& houses, const Store& store);

    [[nodiscard]] bool match(std::size_t house, const QStringList& words) const;
    /// The question's words as match() takes them.
    [[nodiscard]] static QStringList words_of(const QString& question);

private:
    std::vector<QString> texts_;
};

}  // namespace wetfront::ui
