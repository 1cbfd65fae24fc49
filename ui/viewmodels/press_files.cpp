// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/press_files.h"

#include <QDir>
#include <QSaveFile>
#include <algorithm>

#include "records/marks_text.h"
#include "records/record_text.h"

namespace wetfront::ui {
namespace {

Error not_written(const QString& path, const QString& cause) {
    return storage_error(path.toStdString() + " is not written", cause.toStdString(),
                         "the presses are still on screen; choose another place");
}

Result<Visit> read_presses(const QString& file) {
    QFile opened{file};
    if (!opened.open(QIODevice::ReadOnly)) {
        return bad_input(file.toStdString(), opened.errorString().toStdString(),
                         "choose a file that can be read");
    }
    const auto text = opened.read(static_cast<qint64>(most_file_bytes) + 1);
    return parse_visit({text.constData(), static_cast<std::size_t>(text.size())});
}

bool holds(const std::vector<Mark>& marks, const Id& id) {
    return std::ranges::find(marks, id, &Mark::id) != marks.end();
}

// A name that is free, or whose file holds nothing that is not in the visit.
QString path_for(const Visit& visit, const QString& folder) {
    for (int number = 1;; ++number) {
        const QString path = QDir{folder}.filePath(
            QStringLiteral("presses-%1-%2.json").arg(QString::fromStdString(visit.id.text)).arg(number));
        if (!QFile::exists(path)) {
            return path;
        }
        const auto there = read_presses(path);
        if (there && there.value().id == visit.id &&
            std::ranges::all_of(there.value().marks,
                                [&](const Mark& mark) { return holds(visit.marks, mark.id); })) {
            return path;
        }
    }
}

}  // namespace

Result<QString> write_presses(const Visit& visit, const QString& folder) {
    if (!QDir{}.mkpath(folder)) {
        return not_written(folder, QStringLiteral("the folder cannot be made"));
    }
    const QString path = path_for(visit, folder);
    QSaveFile file{path};
    const auto text = QByteArray::fromStdString(marks_file_text(visit));
    const bool written = file.open(QIODevice::WriteOnly) &&
                         file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner) &&
                         file.write(text) == text.size() && file.commit();
    if (!written) {
        return not_written(path, file.errorString());
    }
    const auto back = read_presses(path);
    if (!back || back.value().marks != visit.marks) {
        return not_written(path, QStringLiteral("what is there now is not what was written"));
    }
    return path;
}

std::vector<FoundPresses> presses_to_take(const QStringList& folders, const Store& store) {
    std::vector<FoundPresses> list;
    for (const auto& folder : folders) {
        const QDir dir{folder};
        for (const auto& name : dir.entryList({QStringLiteral("presses-*.json")}, QDir::Files, QDir::Name)) {
            auto visit = read_presses(dir.filePath(name));
            const auto stored =
                visit ? store.marks_of(visit.value().id) : Result<std::vector<Mark>>{visit.error()};
            if (!stored) {
                continue;
            }
            const auto missing = std::ranges::count_if(
                visit.value().marks, [&](const Mark& mark) { return !holds(stored.value(), mark.id); });
            if (missing > 0) {
                list.push_back({dir.filePath(name), std::move(visit).value(), static_cast<int>(missing)});
            }
        }
    }
    return list;
}

Result<void> take_presses(const FoundPresses& found, Store& store) {
    WF_TRY(const auto stored, store.marks_of(found.visit.id));
    for (const auto& mark : found.visit.marks) {
        if (!holds(stored, mark.id)) {
            WF_CHECK(store.add_mark(found.visit.id, mark));
        }
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::ui
