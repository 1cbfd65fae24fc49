// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/template_files.h"

#include <QDir>

#include "records/record_text.h"
#include "viewmodels/carried_file.h"
#include "viewmodels/media.h"

namespace wetfront::ui {
namespace {

constexpr const char* way_out = "the template is kept in Wetfront; choose another place or make room";

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
        files.append(carried_files(folder, QStringLiteral("*.json")));
    }
    return files;
}

Result<QString> write_template(const SettingTemplate& described, const QString& folder) {
    WF_CHECK(check_template(described, "template"));
    if (!QDir{}.mkpath(folder)) {
        return storage_error(folder.toStdString(), "the folder cannot be made", way_out);
    }
    QString path;
    for (int number = 1;; ++number) {
        path = QDir{folder}.filePath(file_name(described.name, number));
        if (!is_taken(path)) {
            break;
        }
        const auto there = read_template(path);
        if (there && there.value().id == described.id) {
            break;
        }
    }
    constexpr auto everyone_reads =
        QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ReadGroup | QFileDevice::ReadOther;
    WF_CHECK(write_carried(path, QByteArray::fromStdString(template_file_text(described)), everyone_reads,
                           way_out));
    return path;
}

Result<SettingTemplate> read_template(const QString& file) {
    WF_TRY(const auto text, read_carried(file));
    return parse_template_file({text.constData(), static_cast<std::size_t>(text.size())});
}

}  // namespace wetfront::ui
