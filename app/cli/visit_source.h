// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "cli/command.h"
#include "records/setting_template.h"
#include "records/visit.h"
#include "sheet/sheet.h"
#include "store/store.h"

namespace wetfront {

/// A visit and what the store knows about it; revision 1 and no others for a visit that came as a file.
struct LoadedVisit {
    VisitFile file;
    int revision = 1;
    PhotoBytes photos{};                ///< that the store holds of it
    std::vector<VisitFile> of_house{};  ///< all visits of its house that the store holds
};

/// The visit that VISIT names: "-" is standard input; a file of that name; else an id in the store.
[[nodiscard]] Result<LoadedVisit> load_visit(const std::string& visit, const Common& common);

/// The text of a file, of which one byte more than `most_bytes` is read, so that its reader sees that it is
/// too long. An error of the file says what to do `instead`.
[[nodiscard]] Result<std::string> text_of_file(const std::string& name, std::size_t most_bytes,
                                               const char* instead);

/// The ids that an option was given, `item`.
[[nodiscard]] Result<std::vector<Id>> ids_of(const std::vector<std::string>& texts, std::string_view item);

/// The setting template in that file.
[[nodiscard]] Result<SettingTemplate> load_template(const std::string& name);

/// An error if --store names no file or one that is not there.
[[nodiscard]] Result<void> check_store_named(const Common& common);

/// The store that --store names, read only. An error if none is named or the file is not there.
[[nodiscard]] Result<Store> open_store(const Common& common);

/// House, farm and day of a visit in one line.
[[nodiscard]] std::string headline(const VisitFile& file);

}  // namespace wetfront
