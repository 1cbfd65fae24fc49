// SPDX-License-Identifier: Apache-2.0
#include "store/house_visits.h"

namespace wetfront {

Result<std::vector<VisitFile>> visit_files_of(const Store& store, const Id& house) {
    WF_TRY(const auto summaries, store.visits_of(house));
    std::vector<VisitFile> files;
    for (const auto& summary : summaries) {
        WF_TRY(auto file, store.visit_file(summary.visit));
        files.push_back(std::move(file));
    }
    return files;
}

}  // namespace wetfront
