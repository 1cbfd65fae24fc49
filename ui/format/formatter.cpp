// SPDX-License-Identifier: Apache-2.0
#include "format/formatter.h"

#include <QCoreApplication>

#include "units/quantity_text.h"

namespace wetfront::ui {
namespace {

// One context for every text marked with WF_TEXT; update_texts gives them the same one.
constexpr const char* context = "core";

}  // namespace

Formatter::Formatter(UnitSystem units, QLocale locale, std::shared_ptr<const QTranslator> texts)
    : units_{units}, locale_{std::move(locale)}, texts_{std::move(texts)} {}

QString Formatter::text(const Message& message) const {
    if (message.empty()) {
        return {};  // an empty key would fetch the catalogue's own header
    }
    std::vector<std::string> shown;
    shown.reserve(message.args.size());
    for (const auto& arg : message.args) {
        if (const auto* plain = std::get_if<std::string>(&arg)) {
            shown.push_back(*plain);
        } else if (const auto* count = std::get_if<int>(&arg)) {
            shown.push_back(std::to_string(*count));
        } else if (const auto* quantity = std::get_if<AnyQuantity>(&arg)) {
            shown.push_back(text(*quantity).toStdString());
        } else {
            shown.push_back(text(std::get<Message>(arg)).toStdString());
        }
    }
    QString translated = texts_ ? texts_->translate(context, message.text.c_str())
                                : QCoreApplication::translate(context, message.text.c_str());
    if (translated.isEmpty()) {
        translated = QString::fromStdString(message.text);
    }
    return QString::fromStdString(expand(translated.toStdString(), shown));
}

QString Formatter::text(const AnyQuantity& quantity) const {
    QuantityText shown = show(quantity, units_);
    shown.number = number(quantity).toStdString();
    return QString::fromStdString(shown.joined(units_));
}

QString Formatter::number(const AnyQuantity& quantity) const {
    return QString::fromStdString(show(quantity, units_).number).replace(u'.', locale_.decimalPoint());
}

QString Formatter::unit(const AnyQuantity& quantity) const {
    return QString::fromStdString(show(quantity, units_).unit);
}

QString Formatter::date(WallTime time) const {
    return QString::fromStdString(local_date(time));
}

QString Formatter::date_and_time(WallTime time) const {
    return QString::fromStdString(local_date(time) + " " + local_clock(time));
}

QString Formatter::clock(std::int64_t milliseconds, bool tenths) const {
    const std::int64_t size = milliseconds < 0 ? -milliseconds : milliseconds;
    QString shown =
        QStringLiteral("%1:%2").arg(QString::number(size / 60'000),
                                    QString::number(size / 1000 % 60).rightJustified(2, QLatin1Char{'0'}));
    if (tenths) {
        shown += locale_.decimalPoint() + QString::number(size / 100 % 10);
    }
    return milliseconds < 0 ? u'-' + shown : shown;
}

}  // namespace wetfront::ui
