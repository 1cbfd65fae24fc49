// SPDX-License-Identifier: Apache-2.0
#include "viewmodels/record_form.h"

#include <QCoreApplication>
#include <iterator>

namespace wetfront::ui {

void append(std::vector<FormField>& lines, std::vector<FormField> more) {
    std::move(more.begin(), more.end(), std::back_inserter(lines));
}

namespace record_form_detail {

QString enumerator_words(const Message& label) {
    return Formatter{}.text(label);
}

std::vector<std::pair<QString, QString>> yes_no_choices() {
    return {{QStringLiteral("yes"), QCoreApplication::translate("FormModel", "Yes")},
            {QStringLiteral("no"), QCoreApplication::translate("FormModel", "No")},
            {QString{}, QCoreApplication::translate("FormModel", "Not asked")}};
}

}  // namespace record_form_detail
}  // namespace wetfront::ui
