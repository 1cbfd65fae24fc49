// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/start_problem_view_model.h"

#include "viewmodels/copies_view_model.h"

namespace wetfront::ui {
namespace {

bool can_be_read(const std::filesystem::path& file, const Clock& clock) {
    const auto store = Store::open(file, clock, OpenMode::read_only);
    return store && store.value().houses();
}

}  // namespace

StartProblemViewModel::StartProblemViewModel(const std::filesystem::path& file, const Clock& clock,
                                             const Error& problem, QString notice, QString earlier,
                                             QObject* parent)
    : QObject{parent},
      problem_{QString::fromStdString(problem.text())},
      notice_{std::move(notice)},
      earlier_{std::move(earlier)},
      can_look_{can_be_read(file, clock)} {
    // What can be read holds more than any copy of it, and what a program has open is in order.
    if (can_look_ || !check_can_be_replaced(file)) {
        return;
    }
    for (const auto& backup : backups_in(backup_folder_of(file), file)) {
        if (const auto content = read_backup(backup.file)) {
            copy_ = backup;
            copy_holds_ = tr("It holds %1. What was entered after that is not in it.")
                              .arg(content_words(content.value(), Formatter{}));
            return;
        }
    }
}

}  // namespace wetfront::ui
