// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QTimer>
#include <QVariantList>

#include "viewmodels/busy_view_model.h"
#include "viewmodels/day_chart.h"
#include "viewmodels/media.h"

namespace wetfront::ui {

/// The design day of a house, or the season of a weather file, as the settings found and those advised make
/// it. Works nothing out before it is opened, and stores nothing.
class DayViewModel : public wetfront::ui::BusyViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a visit or by the session")
    Q_PROPERTY(QVariantMap picture READ picture NOTIFY changed)  ///< that of DayItem; empty: none
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)       ///< {what, first, second, difference}
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed)    ///< what a grower would repeat
    Q_PROPERTY(QString second READ second NOTIFY changed)  ///< name of what stands beside what was found
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed)
    Q_PROPERTY(QStringList assumed READ assumed NOTIFY changed)
    /// Of all cycles that cool as well, those that pump least: a line for each timer, once they were
    /// searched.
    Q_PROPERTY(QStringList cheapest READ cheapest NOTIFY cheapestChanged)
    /// Weather files that lie with the documents or on what is plugged in: {value, text}.
    Q_PROPERTY(QVariantList weatherFiles READ weatherFiles NOTIFY seasonChanged)
    Q_PROPERTY(QVariantList seasonRows READ seasonRows NOTIFY seasonChanged)
    Q_PROPERTY(
        QString seasonWords READ seasonWords NOTIFY seasonChanged)  ///< what it says, or why it does not

public:
    /// What a day is worked out for; none: there is nothing to show.
    using Source = std::function<std::optional<VisitFile>()>;
    /// `folders` are those of weather files.
    DayViewModel(const Formatter& formatter, Source source, Media folders, QObject* parent);
    ~DayViewModel() override { finish(); }

    [[nodiscard]] QVariantMap picture() const { return chart_.picture; }
    [[nodiscard]] QVariantList rows() const { return chart_.rows; }
    [[nodiscard]] QString sentence() const { return chart_.sentence; }
    [[nodiscard]] QString second() const { return chart_.second; }
    [[nodiscard]] QStringList missing() const { return chart_.missing; }
    [[nodiscard]] QStringList assumed() const { return chart_.assumed; }
    [[nodiscard]] QStringList cheapest() const { return cheapest_; }
    [[nodiscard]] QVariantList weatherFiles() const;
    [[nodiscard]] QVariantList seasonRows() const { return season_rows_; }
    [[nodiscard]] QString seasonWords() const { return season_words_; }

    /// Its picture is in sight, in one place more or less: nothing is worked out for nobody.
    Q_INVOKABLE void show();
    Q_INVOKABLE void hide() { --in_sight_; }
    Q_INVOKABLE void lookForWeather();
    /// Takes less than a second on a desktop machine; can be stopped between timers.
    Q_INVOKABLE void searchCheapest();
    /// All days of that file.
    Q_INVOKABLE void simulate(const QString& file);

    /// What it is worked out for has changed: anew where it is in sight, else when it comes there.
    void follow();
    /// Instead of what is advised for that timer, while a finger tries it; none: what is advised.
    void follow_tried(const std::optional<TimerSettings>& tried);

signals:
    void changed();
    void seasonChanged();
    void cheapestChanged();

private:
    void work_out();

    const Formatter& formatter_;
    Source source_;
    Media folders_;
    std::optional<TimerSettings> tried_;
    int in_sight_ = 0;
    QTimer soon_;
    DayChart chart_;
    QStringList cheapest_;
    QStringList weather_files_;
    QVariantList season_rows_;
    QString season_words_;
};

}  // namespace wetfront::ui
