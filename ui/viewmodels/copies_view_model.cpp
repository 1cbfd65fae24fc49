// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/copies_view_model.h"

#include <algorithm>

namespace wetfront::ui {
namespace {

QString qstring(const std::string& text) {
    return QString::fromStdString(text);
}

std::filesystem::path folder_on(const QString& medium) {
    return std::filesystem::path{medium.toStdString()} / "Wetfront copies";
}

QString time_of(const Backup& backup) {
    return qstring(backup.day + " " + backup.clock);
}

}  // namespace

QString content_words(const RecordContent& content, const Formatter& formatter) {
    return CopiesViewModel::tr("houses: %1, entries: %2, latest entry %3")
        .arg(QString::number(content.houses), QString::number(content.entries),
             content.latest ? formatter.date_and_time(*content.latest) : CopiesViewModel::tr("none"));
}

CopiesViewModel::CopiesViewModel(const Context& context, Media media, QObject* parent)
    : BusyViewModel{parent}, context_{context}, find_media_{std::move(media)} {}

QString CopiesViewModel::folder() const {
    return qstring(backup_folder_of(context_.store.file()).string());
}

QString CopiesViewModel::last() const {
    return copies_.empty()
               ? tr("No copy is here yet.")
               : tr("Last copy: %1, %2").arg(time_of(copies_.front().backup), copies_.front().place);
}

QVariantList CopiesViewModel::copies() const {
    QVariantList list;
    for (const auto& copy : copies_) {
        list.append(QVariantMap{{"file", qstring(copy.backup.file.string())},
                                {"title", time_of(copy.backup)},
                                {"place", copy.place}});
    }
    return list;
}

QString CopiesViewModel::problem() const {
    const bool both = !restore_problem_.isEmpty() && !backup_problem_.isEmpty();
    return restore_problem_ + (both ? QStringLiteral("\n") : QString{}) + backup_problem_;
}

void CopiesViewModel::back_up_today() {
    const auto made =
        wetfront::back_up_today(context_.store, backup_folder_of(context_.store.file()), context_.clock);
    backup_problem_ = made ? QString{}
                           : tr("The copy of today could not be made, the records themselves go on. %1")
                                 .arg(qstring(made.error().text()));
    emit toldChanged();
}

void CopiesViewModel::tell(const QString& notice, const QString& problem) {
    notice_ = notice;
    restore_problem_ = problem;
    emit toldChanged();
}

void CopiesViewModel::set_outcome(const QString& outcome) {
    outcome_ = outcome;
    emit outcomeChanged();
}

void CopiesViewModel::look() {
    media_ = find_media_();
    copies_.clear();
    const auto& file = context_.store.file();
    const auto add = [&](const std::filesystem::path& folder, const QString& place) {
        for (auto& backup : backups_in(folder, file)) {
            copies_.push_back({std::move(backup), place});
        }
    };
    add(backup_folder_of(file), tr("on this tablet"));
    for (const auto& medium : media_) {
        add(folder_on(medium), tr("on %1").arg(medium));
    }
    std::ranges::stable_sort(copies_, [](const Copy& a, const Copy& b) {
        return std::pair{b.backup.day, b.backup.clock} < std::pair{a.backup.day, a.backup.clock};
    });
    emit changed();
}

void CopiesViewModel::writeTo(const QString& medium) {
    if (busy()) {
        return;
    }
    set_outcome({});
    const auto work = [this, told = told(), folder = folder_on(medium)] {
        return context_.store.back_up(folder, told);
    };
    begin(tr("Copying to %1").arg(medium), true, work, [this](const auto& made) {
        look();
        set_outcome(made ? tr("Copied and read back: %1").arg(qstring(made.value().string()))
                         : tr("No copy was made. %1").arg(qstring(made.error().text())));
    });
}

void CopiesViewModel::lookAt(const QString& file) {
    const auto copy = std::ranges::find_if(
        copies_, [&](const Copy& each) { return qstring(each.backup.file.string()) == file; });
    if (busy() || copy == copies_.end()) {
        return;
    }
    drop();
    set_outcome({});
    const auto work = [path = copy->backup.file] { return read_backup(path); };
    begin(tr("Reading the copy"), false, work, [this, copy = *copy](const auto& content) {
        if (content) {
            show_content(copy, content.value());
        } else {
            set_outcome(tr("This copy cannot be used. %1").arg(qstring(content.error().text())));
        }
    });
}

void CopiesViewModel::drop() {
    looked_.clear();
    looked_at_.clear();
    emit outcomeChanged();
}

void CopiesViewModel::show_content(const Copy& copy, const RecordContent& content) {
    looked_at_ = copy.backup.file;
    looked_ = {{"title", tr("Copy of %1").arg(time_of(copy.backup))},
               {"place", copy.place},
               {"content", tr("It holds %1.").arg(content_words(content, context_.formatter))},
               {"lost", lost_by(content)}};
    emit outcomeChanged();
}

QString CopiesViewModel::lost_by(const RecordContent& content) const {
    const auto now = context_.store.content();
    const auto since = context_.store.entries_since(content);
    if (!now || !since) {
        return tr("What the records hold now cannot be read. %1")
            .arg(qstring(now ? since.error().text() : now.error().text()));
    }
    const QString words = content_words(now.value(), context_.formatter);
    if (!since.value()) {
        return tr("This copy is not an earlier state of these records. They hold now %1. What is not in the "
                  "copy "
                  "goes out of sight.")
            .arg(words);
    }
    return *since.value() == 0
               ? tr("Nothing was entered since this copy was made.")
               : tr("Entries made since this copy: %1. They go out of sight: the records hold "
                    "now %2.")
                     .arg(QString::number(*since.value()), words);
}

}  // namespace wetfront::ui
