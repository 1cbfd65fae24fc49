// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>
#include <memory>

#include "base/clock.h"
#include "units/message.h"

namespace wetfront::ui {

/// Text for one reader: his unit system and his language. Showing never changes a value. One thread at once.
class Formatter {
public:
    /// `texts`: of the reader's language (language.h); none: the language that the program speaks.
    explicit Formatter(UnitSystem units = UnitSystem::us, QLocale locale = QLocale::c(),
                       std::shared_ptr<const QTranslator> texts = nullptr);

    [[nodiscard]] UnitSystem units() const { return units_; }
    [[nodiscard]] const QLocale& locale() const { return locale_; }
    void set_units(UnitSystem units) { units_ = units; }
    void set_locale(const QLocale& locale) { locale_ = locale; }

    /// The sentence translated (context "core"), numbers in the reader's units and decimal mark. A text
    /// without a translation stays English.
    [[nodiscard]] QString text(const Message& message) const;
    /// "75 s", "82 °F".
    [[nodiscard]] QString text(const AnyQuantity& quantity) const;
    [[nodiscard]] QString number(const AnyQuantity& quantity) const;
    [[nodiscard]] QString unit(const AnyQuantity& quantity) const;

    [[nodiscard]] QString date(WallTime time) const;           ///< "2026-07-01"
    [[nodiscard]] QString date_and_time(WallTime time) const;  ///< "2026-07-01 10:04"
    /// A running clock: "0:45.2", "12:03.0"; `tenths` off: "0:45". Negative time gets a minus sign.
    [[nodiscard]] QString clock(std::int64_t milliseconds, bool tenths) const;

private:
    UnitSystem units_;
    QLocale locale_;
    std::shared_ptr<const QTranslator> texts_;
};

}  // namespace wetfront::ui
