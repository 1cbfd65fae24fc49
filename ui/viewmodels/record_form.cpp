// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/record_form.h"

#include <QCoreApplication>

namespace wetfront::ui::record_form_detail {
namespace {

// Names of enumerators as they stand in files, for the translators.
[[maybe_unused]] constexpr const char* words[] = {
    QT_TRANSLATE_NOOP("core", "left"),      QT_TRANSLATE_NOOP("core", "right"),
    QT_TRANSLATE_NOOP("core", "trimmed"),   QT_TRANSLATE_NOOP("core", "fixed interval"),
    QT_TRANSLATE_NOOP("core", "on demand"), QT_TRANSLATE_NOOP("core", "temperature"),
    QT_TRANSLATE_NOOP("core", "humidity"),  QT_TRANSLATE_NOOP("core", "outside"),
    QT_TRANSLATE_NOOP("core", "in house"),  QT_TRANSLATE_NOOP("core", "behind pad"),
};

}  // namespace

QString enumerator_words(std::string_view name) {
    return QCoreApplication::translate("core", std::string{name}.c_str());
}

std::vector<std::pair<QString, QString>> yes_no_choices() {
    return {{QStringLiteral("yes"), QCoreApplication::translate("FormModel", "Yes")},
            {QStringLiteral("no"), QCoreApplication::translate("FormModel", "No")},
            {QString{}, QCoreApplication::translate("FormModel", "Not asked")}};
}

}  // namespace wetfront::ui::record_form_detail
