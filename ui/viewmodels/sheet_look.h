// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QVariantList>

#include "viewmodels/sheet_paper.h"

namespace wetfront::ui {

/// Language, units and paper of sheets: the reader of one is not who makes it, so each is chosen apart from
/// the screen's, and kept for the next sheet. What it is given outlives it.
class SheetLook {
public:
    SheetLook(const SheetPaper& paper, const Formatter& screen) : paper_{paper}, screen_{screen} {}

    [[nodiscard]] static QVariantList languages();  ///< {value, text}
    [[nodiscard]] QString language() const;         ///< "en", "es"
    [[nodiscard]] QString units() const;            ///< "us" or "si"
    [[nodiscard]] QString paper() const;            ///< "letter" or "a4"
    void set_language(const QString& code);
    void set_units(const QString& name);
    void set_paper(const QString& name);

    [[nodiscard]] Formatter reader() const;
    [[nodiscard]] Paper size() const;

private:
    const SheetPaper& paper_;
    const Formatter& screen_;
};

}  // namespace wetfront::ui
