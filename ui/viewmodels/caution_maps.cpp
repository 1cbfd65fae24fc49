// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/caution_maps.h"

#include <QVariantMap>

namespace wetfront::ui {
namespace {

QString level_name(SignalWord word) {
    switch (word) {
        case SignalWord::danger:
            return QStringLiteral("danger");
        case SignalWord::warning:
            return QStringLiteral("warning");
        case SignalWord::caution:
            return QStringLiteral("caution");
        case SignalWord::notice:
            return QStringLiteral("notice");
    }
    return {};
}

}  // namespace

QVariantList caution_maps(std::span<const Caution* const> cautions, const Formatter& formatter) {
    QVariantList list;
    for (const auto* caution : cautions) {
        list.append(QVariantMap{
            {"level", level_name(caution->word)},
            {"text", formatter.text(caution->text)},
            {"source",
             QString::fromUtf8(caution->source.data(), static_cast<qsizetype>(caution->source.size()))}});
    }
    return list;
}

}  // namespace wetfront::ui
