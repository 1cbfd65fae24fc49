// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QByteArray>
#include <QFileDevice>
#include <QString>
#include <QStringList>

#include "base/result.h"

namespace wetfront::ui {

// Small files that go from machine to machine, on a stick or by hand. What comes from elsewhere must not
// choose which file of this machine is opened or written over: links are no files here.

/// The files of that pattern in the folder, with it, by name.
[[nodiscard]] QStringList carried_files(const QString& folder, const QString& pattern);

/// Something has that name already, be it a link that leads nowhere.
[[nodiscard]] bool is_taken(const QString& file);

/// At most most_file_bytes and one more, by which a reader tells what is too large. Bad input where it cannot
/// be read or is a link.
[[nodiscard]] Result<QByteArray> read_carried(const QString& file);

/// Writes it whole or not at all. Storage errors end with `way_out`.
[[nodiscard]] Result<void> write_carried(const QString& file, const QByteArray& content,
                                         QFileDevice::Permissions permissions, const std::string& way_out);

}  // namespace wetfront::ui
