// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/template_files.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

#include "records/record_text.h"
#include "viewmodels/media.h"

namespace wetfront::ui {
namespace {

Error not_written(const QString& path, const QString& cause) {
    return storage_error(path.toStdString() + " is not written", cause.toStdString(),
                         "the template is kept in Wetfront; choose another place or make room");
}

QString file_name(const std::string& name, int number) {
    QString part;
    for (const QChar c : QString::fromStdString(name)) {
        part += c.isLetterOrNumber() ? c : QLatin1Char('-');
    }
    return number == 1 ? QStringLiteral("%1-template.json").arg(part)
                       : QStringLiteral("%1-%2-template.json").arg(part, QString::number(number));
}

}  // namespace

QStringList template_folders(const QString& documents) {
    return QStringList{documents} + plugged_in_media();
}

QStringList files_that_may_be_templates(const QStringList& folders) {
    QStringList files;
    for (const auto& folder : folders) {
        const QDir dir{folder};
        for (const auto& name :
             dir.entryList({QStringLiteral("*.json")}, QDir::Files | QDir::NoSymLinks, QDir::Name)) {
            files.append(dir.filePath(name));
        }
    }
    return files;
}

Result<QString> write_template(const SettingTemplate& described, const QString& folder) {
    WF_CHECK(check_template(described, "template"));
    if (!QDir{}.mkpath(folder)) {
        return not_written(folder, QStringLiteral("the folder cannot be made"));
    }
    QString path;
    for (int number = 1;; ++number) {
        path = QDir{folder}.filePath(file_name(described.name, number));
        const QFileInfo taken{path};
        if (!taken.exists() && !taken.isSymLink()) {
            break;
        }
        const auto there = read_template(path);
        if (there && there.value().id == described.id) {
            break;
        }
    }
    QSaveFile file{path};
    const auto text = QByteArray::fromStdString(template_file_text(described));
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size() || !file.commit()) {
        return not_written(path, file.errorString());
    }
    return path;
}

Result<SettingTemplate> read_template(const QString& file) {
    // A stick from elsewhere must not choose which file of this machine is opened, or written through a link.
    if (QFileInfo{file}.isSymLink()) {
        return bad_input(file.toStdString(), "a link to another file", "choose the file itself");
    }
    QFile opened{file};
    if (!opened.open(QIODevice::ReadOnly)) {
        return bad_input(file.toStdString(), opened.errorString().toStdString(),
                         "choose a file that can be read");
    }
    const auto text = opened.read(static_cast<qint64>(most_file_bytes) + 1);
    return parse_template_file({text.constData(), static_cast<std::size_t>(text.size())});
}

}  // namespace wetfront::ui
