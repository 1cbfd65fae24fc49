// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/press_files.h"

#include <QDir>
#include <algorithm>

#include "records/marks_text.h"
#include "records/record_text.h"
#include "viewmodels/carried_file.h"

namespace wetfront::ui {
namespace {

constexpr const char* way_out = "the presses are still on screen; choose another place";

Error not_written(const QString& path, const std::string& cause) {
    return storage_error(path.toStdString() + " is not written", cause, way_out);
}

Result<Visit> read_presses(const QString& file) {
    WF_TRY(const auto text, read_carried(file));
    return parse_visit({text.constData(), static_cast<std::size_t>(text.size())});
}

bool holds(const std::vector<Mark>& marks, const Id& id) {
    return std::ranges::find(marks, id, &Mark::id) != marks.end();
}

// A press that the record file does not hold, or one undone elsewhere that still counts in it.
bool is_missing(const std::vector<Mark>& stored, const Mark& mark) {
    const auto same = std::ranges::find(stored, mark.id, &Mark::id);
    return same == stored.end() || (mark.undone && !same->undone);
}

// A name that is free, or whose file holds nothing that is not in the visit.
QString path_for(const Visit& visit, const QString& folder) {
    for (int number = 1;; ++number) {
        const QString path =
            QDir{folder}.filePath(QStringLiteral("presses-%1-%2.json")
                                      .arg(QString::fromStdString(visit.id.text), QString::number(number)));
        if (!is_taken(path)) {
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
        return not_written(folder, "the folder cannot be made");
    }
    const QString path = path_for(visit, folder);
    WF_CHECK(write_carried(path, QByteArray::fromStdString(marks_file_text(visit)),
                           QFileDevice::ReadOwner | QFileDevice::WriteOwner, way_out));
    const auto back = read_presses(path);
    if (!back || back.value().marks != visit.marks) {
        return not_written(path, "what is there now is not what was written");
    }
    return path;
}

std::vector<FoundPresses> presses_to_take(const QStringList& folders, const Store& store) {
    std::vector<FoundPresses> list;
    for (const auto& folder : folders) {
        for (const auto& file : carried_files(folder, QStringLiteral("presses-*.json"))) {
            auto visit = read_presses(file);
            const auto stored = visit ? store.visit(visit.value().id) : Result<Visit>{visit.error()};
            if (!stored) {
                continue;
            }
            const auto missing = std::ranges::count_if(visit.value().marks, [&](const Mark& mark) {
                return is_missing(stored.value().marks, mark);
            });
            if (missing > 0) {
                list.push_back(
                    {file, std::move(visit).value(), static_cast<int>(missing), stored.value().is_signed()});
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
        } else if (is_missing(stored, mark)) {
            WF_CHECK(store.set_undone(mark.id, true));
        }
    }
    return boost::outcome_v2::success();
}

}  // namespace wetfront::ui
