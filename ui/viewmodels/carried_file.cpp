// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/carried_file.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

#include "records/record_text.h"

namespace wetfront::ui {

QStringList carried_files(const QString& folder, const QString& pattern) {
    const QDir dir{folder};
    QStringList files;
    for (const auto& name : dir.entryList({pattern}, QDir::Files | QDir::NoSymLinks, QDir::Name)) {
        files.append(dir.filePath(name));
    }
    return files;
}

bool is_taken(const QString& file) {
    const QFileInfo there{file};
    return there.exists() || there.isSymLink();
}

Result<QByteArray> read_carried(const QString& file) {
    if (QFileInfo{file}.isSymLink()) {
        return bad_input(file.toStdString(), "a link to another file", "choose the file itself");
    }
    QFile opened{file};
    if (!opened.open(QIODevice::ReadOnly)) {
        return bad_input(file.toStdString(), opened.errorString().toStdString(),
                         "choose a file that can be read");
    }
    return opened.read(static_cast<qint64>(most_file_bytes) + 1);
}

Result<void> write_carried(const QString& file, const QByteArray& content,
                           QFileDevice::Permissions permissions, const std::string& way_out) {
    const auto not_written = [&](const QString& cause) {
        return storage_error(file.toStdString() + " is not written", cause.toStdString(), way_out);
    };
    if (QFileInfo{file}.isSymLink()) {
        return not_written(QStringLiteral("a link to another file has that name"));
    }
    QSaveFile saved{file};
    const bool written = saved.open(QIODevice::WriteOnly) && saved.setPermissions(permissions) &&
                         saved.write(content) == content.size() && saved.commit();
    if (!written) {
        return not_written(saved.errorString());
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::ui
