// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QStringList>

#include "base/result.h"

namespace wetfront::ui {

/// Hands a PDF to the system's printing as it is, through the command lp; waits until it was taken, at most
/// 10 s. An error (storage) if there is no such command or if it refuses.
[[nodiscard]] Result<void> print_file_bytes(const QByteArray& pdf, const QString& printer, int copies);

/// The same for PDF files, by their whole paths, all as one job: each begins on a new page, as it is. Waits a
/// second longer for each. From any thread.
[[nodiscard]] Result<void> print_files(const QStringList& files, const QString& printer, int copies);

}  // namespace wetfront::ui
