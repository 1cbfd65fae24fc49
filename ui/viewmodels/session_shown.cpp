// SPDX-License-Identifier: Apache-2.0
// How the session shows things: units, light, language. None of it changes a record.
#include "format/language.h"
#include "viewmodels/session_view_model.h"

namespace wetfront::ui {

void SessionViewModel::take_up_preferences() {
    if (preferences_.kept(QStringLiteral("units")) == QStringLiteral("si")) {
        context_.formatter.set_units(UnitSystem::si);
    }
    if (const QString kept = preferences_.kept(QStringLiteral("theme")); !kept.isEmpty()) {
        theme_ = kept;
    }
    language_ = preferences_.kept(QStringLiteral("language"));
    paper_.chosen = preferences_;
    speak();
}

void SessionViewModel::speak() {
    paper_.language = preferences_.speak ? preferences_.speak(language_) : first_spoken({});
    context_.formatter.set_locale(language_.isEmpty() ? QLocale{} : locale_in(language_, QLocale{}));
}

QString SessionViewModel::unitSystem() const {
    return context_.formatter.units() == UnitSystem::us ? QStringLiteral("us") : QStringLiteral("si");
}

void SessionViewModel::setUnitSystem(const QString& name) {
    context_.formatter.set_units(name == QStringLiteral("si") ? UnitSystem::si : UnitSystem::us);
    preferences_.keep(QStringLiteral("units"), unitSystem());
    if (visit_) {
        visit_->show_again();
    }
    history_->show_again();
    maintenance_->show_again();
    day_->follow();
    failed(houses_->reload());
    emit shownChanged();
    emit placeChanged();
}

void SessionViewModel::setTheme(const QString& name) {
    theme_ = name;
    preferences_.keep(QStringLiteral("theme"), theme_);
    emit shownChanged();
}

QString SessionViewModel::decimalMark() const {
    return context_.formatter.locale().decimalPoint();
}

QVariantList SessionViewModel::languages() const {
    QVariantList list{
        QVariantMap{{QStringLiteral("value"), QString{}}, {QStringLiteral("text"), tr("As the system")}}};
    for (const auto& language : ui::languages()) {
        list.append(
            QVariantMap{{QStringLiteral("value"), language.code}, {QStringLiteral("text"), language.name}});
    }
    return list;
}

void SessionViewModel::setLanguage(const QString& code) {
    if (visit_ && visit_->waits_for_storage()) {
        set_problem(tr("Presses are not stored yet. Choose the language once they are."));
        return;
    }
    language_ = code;
    preferences_.keep(QStringLiteral("language"), language_);
    speak();
    say_again();
    emit shownChanged();
    emit languageChanged();
}

// View models hold what they say: those of a visit and of a template are made anew, the others read again.
void SessionViewModel::say_again() {
    failed(houses_->reload());
    if (visit_) {
        const int step = visit_->step();
        openVisit(QString::fromStdString(visit_->file().visit.id.text));
        visit_->goTo(step);
    }
    if (!house_.id.empty()) {
        failed(history_->show(house_));
        maintenance_->show_again();
        day_->follow();
    }
    if (over_ == Over::copies) {
        copies_->look();
    }
    if (over_ == Over::bundles) {
        bundles_->look();
    }
    if (over_ == Over::sheets) {
        showSheets();
    }
    if (over_ == Over::removed) {
        failed(removed_->reload());
    }
    if (over_ == Over::templates) {
        failed(templates_->reload());
    }
    if (described_) {
        const auto id = QString::fromStdString(described_->described().id.text);
        take_down(std::move(described_));
        openTemplate(id);
    }
}

}  // namespace wetfront::ui
