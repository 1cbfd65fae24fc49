// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "cli/json_output.h"
#include "cli/visit_source.h"
#include "cycle/advice.h"
#include "rules/rules.h"
#include "sheet/sheet.h"
#include "store/record_hash.h"

namespace wetfront {
namespace {

struct SheetOptions {
    std::string visit;
    std::string file;
    SheetPaperSize paper = SheetPaperSize::letter;
    SheetLanguage language = SheetLanguage::english;
    bool summary = false;
};

Result<ExitStatus> run_sheet(const SheetOptions& options, const Common& common) {
    if (!common.surroundings.print_sheet) {
        return bad_input("sheet", "", "this build has no printer; build it with WETFRONT_DESKTOP=ON");
    }
    WF_TRY(const auto visit, load_visit(options.visit, common));
    const auto& file = visit.file;
    const auto timings = timings_of(file);
    const auto advice = advise(file);
    const auto found = check(file, timings, advice, WhichSettings::found);
    const auto left = check(file, timings, advice, WhichSettings::left);
    const SheetInputs inputs{file,
                             timings,
                             advice,
                             found,
                             left,
                             visit.revision,
                             common.surroundings.clock.wall_now(),
                             record_hash(file),
                             trends_after(file, visit.of_house)};
    const auto content = options.summary ? grower_summary(inputs) : commissioning_sheet(inputs);
    WF_CHECK(common.surroundings.print_sheet(
        {content, options.file, options.paper, common.units, options.language}));
    if (common.json) {
        print_json(common.out(),
                   {{"file", options.file}, {"visit", file.visit.id.text}, {"draft", content.draft}});
    } else {
        common.out() << options.file << (content.draft ? " (draft: the visit is not signed)" : "") << '\n';
    }
    return ExitStatus::done;
}

}  // namespace

void add_sheet(CLI::App& app, const Common& common, Work& chosen) {
    auto* command = app.add_subcommand("sheet", "the commissioning sheet of a visit as PDF");
    const auto options = std::make_shared<SheetOptions>();
    command->add_option("visit", options->visit, "a file, - or an id in the store")
        ->required()
        ->type_name("VISIT");
    command
        ->add_option("-o,--output", options->file,
                     "the PDF to write; replaced only when the new one is whole")
        ->required()
        ->type_name("F.pdf");
    command->add_option("--paper", options->paper, "letter (default) or a4")
        ->transform(one_of<SheetPaperSize>({{"letter", SheetPaperSize::letter}, {"a4", SheetPaperSize::a4}},
                                           "letter or a4"))
        ->type_name("letter|a4");
    command->add_option("--language", options->language, "en (default) or es, Spanish")
        ->transform(one_of<SheetLanguage>({{"en", SheetLanguage::english}, {"es", SheetLanguage::spanish}},
                                          "en or es"))
        ->type_name("en|es");
    command->add_flag("--summary", options->summary, "one page in plain words for the grower instead");
    command->footer("Example: wetfront-cli sheet visit.json -o sheet.pdf --paper a4 --language es");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_sheet(*options, common); }; });
}

}  // namespace wetfront
