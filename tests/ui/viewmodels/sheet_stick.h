// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QDir>
#include <QFile>
#include <atomic>

#include "desk.h"

namespace wetfront::ui {

/// A folder that stands for a stick, and a painter that says what it was given.
class SheetStick : public Desk {
protected:
    SheetStick() {
        QDir{}.mkpath(stick_);
        // The title of a summary alone names the house.
        const auto kind_of = [](const SheetContent& content) {
            return content.title.args.empty() ? QByteArray{"commissioning"} : QByteArray{"summary"};
        };
        paper_.pages = [this, kind_of](const SheetContent& content, const Formatter&, Paper) {
            last_kind_ = kind_of(content);
            return std::vector<QImage>{QImage{10, 10, QImage::Format_RGB32}};
        };
        paper_.pdf = [this, kind_of](const SheetContent& content, const Formatter&,
                                     Paper) -> Result<QByteArray> {
            return drawn_as_.isEmpty() ? "%PDF-" + kind_of(content) : drawn_as_;
        };
        paper_.print = [this, kind_of](const SheetContent& content, const Formatter&, Paper) -> Result<bool> {
            last_kind_ = kind_of(content);
            return true;
        };
        paper_.folder = folder_.filePath(QStringLiteral("sheets"));
        paper_.media = [this] { return pull_out_ ? QStringList{} : plugged_in_; };
    }
    [[nodiscard]] QDir sheets_on_stick() const { return QDir{stick_ + QStringLiteral("/Wetfront sheets")}; }
    [[nodiscard]] QStringList on_stick() const {
        return sheets_on_stick().entryList(QDir::Files, QDir::Name);
    }
    [[nodiscard]] QByteArray content(const QString& name) const {
        QFile file{sheets_on_stick().filePath(name)};
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{"no such file"};
    }

    QString stick_ = folder_.filePath(QStringLiteral("stick"));
    QStringList plugged_in_{stick_};
    std::atomic<bool> pull_out_ = false;
    QByteArray drawn_as_;
    QByteArray last_kind_;
    SheetPaper paper_;
};

}  // namespace wetfront::ui
