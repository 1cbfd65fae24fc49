// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/stick.h"

#include <QCoreApplication>
#include <cstring>

namespace wetfront::ui {
namespace {

class StickWords {
    Q_DECLARE_TR_FUNCTIONS(StickWords)
};

}  // namespace

std::optional<FileFailure> keep_bytes(const QByteArray& bytes, const QString& file) {
    return keep_file(file.toStdString(), {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

QString sheets_folder_on(const QString& medium) {
    return medium + QStringLiteral("/Wetfront sheets");
}

QString stick_words(const FileFailure& failure, const QString& place) {
    switch (failure.fault) {
        case FileFault::no_room:
            return StickWords::
                tr("There is no room left on %1. Nothing is lost: make room there, or take another stick.")
                    .arg(place);
        case FileFault::not_permitted:
            return StickWords::
                tr("Nothing can be written to %1: it is read-only. Nothing is lost: slide its lock back, or "
                   "take another stick.")
                    .arg(place);
        case FileFault::gone:
            return StickWords::tr(
                       "%1 was pulled out or does not answer. Nothing is lost: plug it in again, then press "
                       "once more.")
                .arg(place);
        case FileFault::differs:
            return StickWords::tr(
                       "%1 does not give back what was written to it. Nothing is lost: take another stick "
                       "and keep "
                       "nothing on this one.")
                .arg(place);
        case FileFault::other:
            break;
    }
    return StickWords::tr(
               "It could not be written to %1 (%2). Nothing is lost: take another stick or folder.")
        .arg(place, QString::fromLatin1(::strerrordesc_np(failure.number)));
}

QString no_stick_words() {
    return StickWords::tr("No stick is plugged in. Plug one in, wait a moment, then press once more.");
}

std::optional<FileFailure> pulled_out(const SheetPaper& paper, const QString& medium) {
    return paper.media().contains(medium) ? std::nullopt : std::optional{FileFailure{FileFault::gone}};
}

}  // namespace wetfront::ui
