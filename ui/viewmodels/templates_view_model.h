// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariantMap>
#include <functional>
#include <optional>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// The firm's setting templates, the plain ones to start from, and templates that come as files. GUI thread.
class TemplatesViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the session")
    Q_PROPERTY(QVariantList own READ own NOTIFY changed)  ///< {id, name, note, detail, problem}, by name
    Q_PROPERTY(QVariantList generic READ generic CONSTANT)
    Q_PROPERTY(QStringList files READ files NOTIFY filesChanged)  ///< that may hold a template
    Q_PROPERTY(QString documents READ documents CONSTANT)
    /// {name, note, detail, lines, known} of the file that was looked at; empty: none. `known`: what is here
    /// already.
    Q_PROPERTY(QVariantMap offered READ offered NOTIFY offeredChanged)

public:
    /// `folders`: where files are looked for, the first one for documents.
    TemplatesViewModel(const Context& context, std::function<QStringList()> folders, QObject* parent);

    [[nodiscard]] QVariantList own() const { return own_; }
    [[nodiscard]] QVariantList generic() const;
    [[nodiscard]] QStringList files() const { return files_; }
    [[nodiscard]] QString documents() const { return folders_().front(); }
    [[nodiscard]] QVariantMap offered() const;

    /// Reads the list anew.
    [[nodiscard]] Result<void> reload();
    /// A new template that starts as that one does.
    [[nodiscard]] Result<SettingTemplate> make_from(const Id& id);

    Q_INVOKABLE void lookForFiles();
    /// Offers the template of a file; returns what is wrong with it, or an empty text.
    Q_INVOKABLE QString lookAt(const QString& file);
    Q_INVOKABLE void dropOffered();
    /// Adds what is offered; returns what is wrong, or an empty text.
    Q_INVOKABLE QString addOffered();

signals:
    void changed();
    void filesChanged();
    void offeredChanged();

private:
    [[nodiscard]] QVariantMap line(const SettingTemplate& described) const;
    [[nodiscard]] std::string name_not_taken(const QString& wanted) const;
    [[nodiscard]] bool is_here(const SettingTemplate& described) const;

    Context context_;
    std::function<QStringList()> folders_;
    QVariantList own_;
    QStringList files_;
    std::optional<SettingTemplate> offered_;
};

}  // namespace wetfront::ui
