// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QStringList>

#include "store/store.h"

namespace wetfront::ui {

// Presses that the record file did not take are written elsewhere, and found there later.

/// A file of a visit's presses, and how many of them the record file does not hold, or holds as counting
/// where they were undone.
struct FoundPresses {
    QString file;
    Visit visit;  ///< its id, house, start and marks only
    int missing = 0;
    bool is_signed = false;  ///< the visit, since: nothing goes into it any more
};

/// Writes the visit's marks into the folder, which is made if it is not there, as a file that its owner alone
/// can read, and reads it back. An earlier file is replaced only if all its presses are in this one. Returns
/// its path. Storage errors say what to do.
[[nodiscard]] Result<QString> write_presses(const Visit& visit, const QString& folder);

/// The files in these folders that hold presses of visits in the store which are not in it. What is no such
/// file is passed over.
[[nodiscard]] std::vector<FoundPresses> presses_to_take(const QStringList& folders, const Store& store);

/// Adds the missing ones to the journal, each once; an undone press comes in undone, and one that counts here
/// is undone. Refused where the visit is signed. The file stays where it is.
[[nodiscard]] Result<void> take_presses(const FoundPresses& found, Store& store);

}  // namespace wetfront::ui
