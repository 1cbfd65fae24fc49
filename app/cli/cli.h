// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>
#include <iosfwd>
#include <string>
#include <vector>

#include "base/clock.h"
#include "records/sheet_content.h"
#include "units/kinds.h"

namespace wetfront {

enum class SheetPaperSize { letter, a4 };
enum class SheetLanguage { english, spanish };

/// A sheet that is to become a PDF.
struct SheetOrder {
    const SheetContent& content;
    SheetPaperSize paper = SheetPaperSize::letter;
    UnitSystem units = UnitSystem::us;
    SheetLanguage language = SheetLanguage::english;
};

/// Paints the sheet; gives the bytes of the PDF.
using SheetPrinter = std::function<Result<std::string>(const SheetOrder&)>;

/// A picture file as a record keeps it: scaled, JPEG, without what the camera wrote into it unless that is to
/// be kept.
using PhotoTaker = std::function<Result<std::string>(const std::string& file, bool keep_camera_data)>;

/// What the command line is given by its main, and by tests. All must outlive the call.
struct CliSurroundings {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    const Clock& clock;
    SheetPrinter print_sheet;  ///< empty: this build has no printer, and says so
    PhotoTaker take_photo{};   ///< empty: this build reads no pictures, and says so
};

/// Exit statuses of the program.
enum class ExitStatus {
    done = 0,
    found = 1,
    bad_input = 2,
    storage_failed = 3,
    stopped = 130  ///< as shells count it: 128 and the number of SIGINT
};

/// Runs one command; `arguments` without the program's name. Result text goes to `out`, complaints to `err`
/// as "wetfront-cli: what: why". Never throws. Example: run_cli({"timing", "45s,47s"}, surroundings).
[[nodiscard]] ExitStatus run_cli(const std::vector<std::string>& arguments,
                                 const CliSurroundings& surroundings);

}  // namespace wetfront
