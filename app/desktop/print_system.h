// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QString>

#include "base/result.h"

namespace wetfront::ui {

/// Hands a PDF to the system's printing as it is, through the command lp; waits until it was taken, at most
/// 10 s. An error (storage) if there is no such command or if it refuses.
[[nodiscard]] Result<void> print_file_bytes(const QByteArray& pdf, const QString& printer, int copies);

}  // namespace wetfront::ui
