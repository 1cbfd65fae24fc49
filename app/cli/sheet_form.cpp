// SPDX-License-Identifier: Apache-2.0
#include "cli/sheet_form.h"

namespace wetfront {

void add_sheet_form(CLI::App& command, SheetForm& form) {
    command.add_option("--paper", form.paper, "letter (default) or a4")
        ->transform(one_of<SheetPaperSize>({{"letter", SheetPaperSize::letter}, {"a4", SheetPaperSize::a4}},
                                           "letter or a4"))
        ->type_name("letter|a4");
    command.add_option("--language", form.language, "en (default) or es, Spanish")
        ->transform(one_of<SheetLanguage>({{"en", SheetLanguage::english}, {"es", SheetLanguage::spanish}},
                                          "en or es"))
        ->type_name("en|es");
    command.add_flag("--summary", form.summary, "one page in plain words for the grower instead");
}

Result<void> check_printer(const std::string& item, const Common& common) {
    if (!common.surroundings.print_sheet) {
        return bad_input(item, "", "this build has no printer; build it with WETFRONT_DESKTOP=ON");
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront
