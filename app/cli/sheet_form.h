// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cli/command.h"
#include "sheet/sheet.h"

namespace wetfront {

/// How sheets are drawn, as the options of a command say it.
struct SheetForm {
    SheetPaperSize paper = SheetPaperSize::letter;
    SheetLanguage language = SheetLanguage::english;
    bool summary = false;

    [[nodiscard]] SheetKind kind() const { return summary ? SheetKind::summary : SheetKind::commissioning; }
    /// `content` outlives the order.
    [[nodiscard]] SheetOrder order(const SheetContent& content, const Common& common) const {
        return {content, paper, common.units, language};
    }
};

/// --paper, --language and --summary. `form` outlives the command.
void add_sheet_form(CLI::App& command, SheetForm& form);

/// An error if this build paints no sheets; `item` names what was asked for.
[[nodiscard]] Result<void> check_printer(const std::string& item, const Common& common);

}  // namespace wetfront
