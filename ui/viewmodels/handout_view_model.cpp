// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/handout_view_model.h"

#include "sheet/sheet_file_name.h"
#include "viewmodels/stick.h"

namespace wetfront::ui {

HandoutViewModel::HandoutViewModel(VisitRecord& record, const SheetViewModel& sheet, const SheetPaper& paper,
                                   QObject* parent)
    : QObject{parent}, record_{record}, sheet_{sheet}, paper_{paper} {
    // The picture of the summary follows what is entered as that of the sheet does.
    connect(&sheet_, &SheetViewModel::pagesChanged, this, [this] {
        if (summaryShown()) {
            showSummary();
        }
    });
}

QString HandoutViewModel::busyText() const {
    return tr("Writing to %1 and reading back").arg(medium_);
}

void HandoutViewModel::tell(const QString& outcome, const QString& problem) {
    outcome_ = outcome;
    problem_ = problem;
    emit changed();
}

void HandoutViewModel::putOnStick(bool summary) {
    if (busy_) {
        return;
    }
    kind_ = summary ? SheetKind::summary : SheetKind::commissioning;
    media_ = paper_.media();
    if (media_.isEmpty()) {
        tell({}, no_stick_words());
    } else if (media_.size() == 1) {
        putOn(media_.front());
    } else {
        tell({}, {});
    }
}

Result<QByteArray> HandoutViewModel::bytes() const {
    if (kind_ == SheetKind::commissioning) {
        return sheet_.pdf();
    }
    WF_TRY(const auto summary, sheet_.content(SheetKind::summary));
    return paper_.pdf(summary, sheet_.look().reader(), sheet_.look().size());
}

void HandoutViewModel::putOn(const QString& medium) {
    if (busy_) {
        return;
    }
    media_.clear();
    medium_ = medium;
    if (const auto gone = pulled_out(paper_, medium)) {
        tell({}, stick_words(*gone, medium));
        return;
    }
    const auto pdf = bytes();
    if (!pdf) {
        tell({}, QString::fromStdString(pdf.error().text()));
        return;
    }
    const QString folder = sheets_folder_on(medium);
    const QString file =
        folder + QLatin1Char('/') + QString::fromStdString(sheet_file_name(record_.file(), kind_));
    busy_ = true;
    tell({}, {});
    const auto work = [keep = paper_.keep, pdf = pdf.value(), folder, file] {
        const auto no_folder = keep_folder(folder.toStdString());
        return no_folder ? no_folder : keep(pdf, file);
    };
    worker_.run(work, [this, file](const std::optional<FileFailure>& failed) {
        busy_ = false;
        const auto failure = failed ? failed : pulled_out(paper_, medium_);
        if (failure) {
            tell({}, stick_words(*failure, medium_));
        } else {
            tell(tr("On the stick and read back: %1").arg(file), {});
        }
    });
}

void HandoutViewModel::showSummary() {
    const auto content = sheet_.content(SheetKind::summary);
    const auto pages = content ? paper_.pages(content.value(), sheet_.look().reader(), sheet_.look().size())
                               : std::vector<QImage>{};
    summary_ = pages.empty() ? QImage{} : pages.front();
    ++summary_revision_;
    emit summaryChanged();
    if (!content) {
        tell({}, QString::fromStdString(content.error().text()));
    }
}

void HandoutViewModel::hideSummary() {
    summary_ = QImage{};
    emit summaryChanged();
}

Result<bool> HandoutViewModel::print_summary() const {
    WF_TRY(const auto summary, sheet_.content(SheetKind::summary));
    return paper_.print(summary, sheet_.look().reader(), sheet_.look().size());
}

void HandoutViewModel::printSummary() {
    const auto printed = print_summary();
    if (!printed) {
        tell({}, QString::fromStdString(printed.error().text()));
    } else {
        tell(printed.value() ? tr("The summary was sent to the printer.") : tr("Not printed."), {});
    }
}

}  // namespace wetfront::ui
