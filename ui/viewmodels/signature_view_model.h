// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <map>
#include <optional>

#include "viewmodels/visit_record.h"

namespace wetfront::ui {

/// Who signs the sheet at hand, and the signatures that were drawn for it. They are kept here until the visit
/// is signed and go into it then, not before: whatever is changed meanwhile takes them off, because they were
/// drawn for another sheet.
class SignatureViewModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a sheet")
    /// {line, state, drawn, strokes}: the persons of an open visit, the signatures of a signed one.
    Q_PROPERTY(QVariantList signers READ signers NOTIFY changed)
    Q_PROPERTY(
        QString leftOut READ leftOut NOTIFY changed)       ///< who has drawn none; empty: nobody is left out
    Q_PROPERTY(QString notice READ notice NOTIFY changed)  ///< that signatures were taken off, and why
    // The field: whose signature is drawn there now, and what stands on it.
    Q_PROPERTY(bool open READ open NOTIFY fieldChanged)
    Q_PROPERTY(QString name READ name NOTIFY fieldChanged)
    Q_PROPERTY(QString role READ role NOTIFY fieldChanged)
    Q_PROPERTY(QStringList strokes READ strokes NOTIFY fieldChanged)
    Q_PROPERTY(QString state READ state NOTIFY fieldChanged)  ///< how much is drawn, for who does not see it
    Q_PROPERTY(QString problem READ problem NOTIFY fieldChanged)

public:
    SignatureViewModel(VisitRecord& record, QObject* parent);

    [[nodiscard]] QVariantList signers() const;
    [[nodiscard]] QString leftOut() const;
    [[nodiscard]] QString notice() const { return notice_; }
    [[nodiscard]] bool open() const { return at_field_.has_value(); }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString role() const;
    [[nodiscard]] QStringList strokes() const;
    [[nodiscard]] QString state() const;
    [[nodiscard]] QString problem() const { return problem_; }

    /// Opens the field for that person of the visit, with what he has drawn before.
    Q_INVOKABLE void draw(int person);
    /// A line that was drawn (Stroke::text()). One that is too much is not taken, and `problem` says so.
    Q_INVOKABLE void addStroke(const QString& points);
    Q_INVOKABLE void clear();
    /// Takes what is drawn for his signature and closes the field; what is none (is_signature()) is refused.
    Q_INVOKABLE void take();
    /// Closes the field; what he has drawn before stays.
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void takeOff(int person);

    /// Everybody's drawn signature with the time when it was drawn, and last that of the person who signs
    /// the visit at that time, drawn or not. `signer`: an index into its persons.
    [[nodiscard]] std::vector<Signature> signatures_with(std::size_t signer, WallTime at) const;
    /// What was signed is not the sheet any more: drawn signatures are taken off, and that is said.
    void sheet_changed();

signals:
    void changed();
    void fieldChanged();

private:
    struct Drawn {
        std::vector<Stroke> strokes;
        WallTime at;
    };

    [[nodiscard]] const std::vector<Person>& persons() const { return record_.file().visit.persons; }
    void close_field();

    VisitRecord& record_;
    std::map<std::size_t, Drawn> drawn_;  ///< by the person's place in the visit
    QString notice_;
    std::optional<std::size_t> at_field_;
    std::vector<Stroke> on_field_;
    QString problem_;
};

}  // namespace wetfront::ui
