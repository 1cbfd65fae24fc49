// SPDX-License-Identifier: Apache-2.0
#include <ostream>

#include "base/whole_file.h"
#include "batch/sheet_reader.h"
#include "cli/json_output.h"
#include "cli/sheet_form.h"
#include "cli/visit_source.h"

namespace wetfront {
namespace {

struct SheetOptions {
    std::string visit;
    std::string file;
    SheetForm form;
};

Result<ExitStatus> run_sheet(const SheetOptions& options, const Common& common) {
    WF_CHECK(check_printer("sheet", common));
    WF_TRY(auto visit, load_visit(options.visit, common));
    const SheetSource source{std::move(visit.file), visit.revision,
                             std::make_shared<const std::vector<VisitFile>>(std::move(visit.of_house)),
                             std::move(visit.photos)};
    const auto content = sheet_content(source, options.form.kind(), common.surroundings.clock.wall_now());
    WF_TRY(const auto bytes, common.surroundings.print_sheet(options.form.order(content, common)));
    WF_CHECK(write_whole(options.file, bytes));
    if (common.json) {
        print_json(common.out(),
                   {{"file", options.file}, {"visit", source.file.visit.id.text}, {"draft", content.draft}});
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
    add_sheet_form(*command, options->form);
    command->footer("Example: wetfront-cli sheet visit.json -o sheet.pdf --paper a4 --language es");
    command->callback(
        [&common, &chosen, options] { chosen = [&common, options] { return run_sheet(*options, common); }; });
}

}  // namespace wetfront
