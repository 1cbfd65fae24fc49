// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>
#include <QStringList>

#include "records/setting_template.h"

namespace wetfront::ui {

/// Where files of templates are written and looked for: the folder for documents, then what is plugged in.
[[nodiscard]] QStringList template_folders(const QString& documents);

/// All files in these folders that may hold a template, with their folder, by name. Links are no files.
[[nodiscard]] QStringList files_that_may_be_templates(const QStringList& folders);

/// Writes the template into the folder, which is made if it is not there; returns the file. A file of that
/// name that holds another template stays, and so does a link. A template that is not whole is refused.
[[nodiscard]] Result<QString> write_template(const SettingTemplate& described, const QString& folder);

/// Bad input where the file cannot be read, is a link, is too large or holds no whole template.
[[nodiscard]] Result<SettingTemplate> read_template(const QString& file);

}  // namespace wetfront::ui
