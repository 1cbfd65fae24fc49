// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantMap>
#include <functional>
#include <map>

#include "viewmodels/template_problems.h"
#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// One of the firm's setting templates, to be changed. What is entered is stored at once; what would be wrong
/// by itself (resolution 0) is refused, what does not fit together (yet) is stored and said at its line. GUI
/// thread.
class TemplateViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString note READ note NOTIFY changed)
    Q_PROPERTY(QString kind READ kind NOTIFY changed)
    Q_PROPERTY(QVariantList kinds READ kinds CONSTANT)  ///< {value, text}
    Q_PROPERTY(QString countsFrom READ countsFrom NOTIFY changed)
    Q_PROPERTY(QVariantList countsFromChoices READ countsFromChoices CONSTANT)
    Q_PROPERTY(QString trimRows READ trimRows NOTIFY changed)  ///< "1" to "4"; empty: none
    Q_PROPERTY(bool trimRowsShown READ trimRowsShown NOTIFY changed)
    Q_PROPERTY(QString trimRowsProblem READ trimRowsProblem NOTIFY changed)
    /// {title, asksTrimRows, settings: {key, name, units: {value, text}, timeOfDay, negative}}: by the
    /// questions of a grower, then what a controller is told or shows.
    Q_PROPERTY(QVariantList groups READ groups CONSTANT)
    /// By key: {shown, used, label, unit, unitText, resolution, least, most, note, summary, problem,
    /// problemField}
    Q_PROPERTY(QVariantMap settings READ settings NOTIFY changed)
    Q_PROPERTY(QStringList order READ order NOTIFY changed)  ///< labels, as the controller asks
    Q_PROPERTY(
        QVariantList demands READ demands CONSTANT)  ///< {value, text}: what it may demand between settings
    /// By value: {shown, ticked, problem}
    Q_PROPERTY(QVariantMap demanded READ demanded NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)  ///< why it cannot be used yet; empty: it can
    Q_PROPERTY(QStringList folders READ folders NOTIFY foldersChanged)

public:
    /// `folders`: where it may be written.
    TemplateViewModel(const Context& context, SettingTemplate described, std::function<QStringList()> folders,
                      QObject* parent);

    [[nodiscard]] const SettingTemplate& described() const { return template_; }
    [[nodiscard]] QString name() const { return QString::fromStdString(template_.name); }
    [[nodiscard]] QString note() const { return QString::fromStdString(template_.note); }
    [[nodiscard]] QString kind() const;
    [[nodiscard]] QVariantList kinds() const;
    [[nodiscard]] QString countsFrom() const;
    [[nodiscard]] QVariantList countsFromChoices() const;
    [[nodiscard]] QString trimRows() const;
    [[nodiscard]] bool trimRowsShown() const;
    [[nodiscard]] QString trimRowsProblem() const { return problems_.trim_rows; }
    [[nodiscard]] QVariantList groups() const;
    [[nodiscard]] QVariantMap settings() const { return settings_; }
    [[nodiscard]] QStringList order() const;
    [[nodiscard]] QVariantList demands() const;
    [[nodiscard]] QVariantMap demanded() const { return demanded_; }
    [[nodiscard]] QString problem() const { return problems_.first(); }
    [[nodiscard]] QStringList folders() const { return folders_; }

    // Each returns what is wrong, or an empty text once it is stored.

    /// `field`: "name", "note", "kind", "counts_from", "trim_rows".
    Q_INVOKABLE QString enter(const QString& field, const QString& text);
    /// `field`: "label", "unit", "resolution", "least", "most", "note". A number may have its unit behind it.
    Q_INVOKABLE QString enterSetting(const QString& key, const QString& field, const QString& text);
    /// Puts a setting in, as it was before it was taken out, or takes it out.
    Q_INVOKABLE QString use(const QString& key, bool used);
    Q_INVOKABLE QString demand(const QString& value, bool wanted);
    /// Changes places with the setting before it (-1) or behind it (1).
    Q_INVOKABLE QString move(int row, int by);

    /// Looks again for what is plugged in.
    Q_INVOKABLE void lookForFolders();
    /// Where it was written, or what went wrong, as one sentence.
    Q_INVOKABLE QString writeTo(const QString& folder);

signals:
    void changed();
    void foldersChanged();

private:
    Result<void> keep(SettingTemplate wanted);
    /// As it was before it was taken out.
    [[nodiscard]] TemplateSetting setting_to_put_in(TemplateKey key) const;
    void work_out();

    Context context_;
    SettingTemplate template_;
    std::function<QStringList()> look_for_folders_;
    QStringList folders_;
    TemplateProblems problems_;
    QVariantMap settings_;
    QVariantMap demanded_;
    std::map<TemplateKey, TemplateSetting> taken_out_;
};

}  // namespace wetfront::ui
