// SPDX-License-Identifier: Apache-2.0
#include "format/language.h"

#include <algorithm>

namespace wetfront::ui {

std::vector<Language> languages() {
    return {{QStringLiteral("en"), QStringLiteral("English")},
            {QStringLiteral("es"), QStringLiteral("español")}};
}

QString first_spoken(const QStringList& wanted) {
    const auto all = languages();
    for (const auto& tag : wanted) {
        const QString code = tag.section(QLatin1Char('-'), 0, 0);
        if (std::any_of(all.begin(), all.end(), [&](const Language& each) { return each.code == code; })) {
            return code;
        }
    }
    return all.front().code;
}

std::shared_ptr<QTranslator> texts_in(const QString& code) {
    auto texts = std::make_shared<QTranslator>();
    // False for English, which has no catalogue.
    static_cast<void>(texts->load(QStringLiteral(":/texts/wetfront_%1.qm").arg(code)));
    return texts;
}

QLocale locale_in(const QString& code, const QLocale& place) {
    const QLocale alone{code};
    if (alone.language() == place.language()) {
        return place;
    }
    return alone.language() == QLocale::Spanish ? QLocale{QLocale::Spanish, QLocale::LatinAmerica} : alone;
}

}  // namespace wetfront::ui
