// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QStringList>
#include <QVariantList>
#include <functional>
#include <optional>
#include <vector>

#include "format/formatter.h"
#include "records/fields.h"

namespace wetfront::ui {

/// One line of a form: what it is, what it holds, and how a typed text gets in. The text as entered is the
/// truth; the number shown is made from it and never written back.
struct FormField {
    enum class Type { quantity, number, text, choice, time_of_day, yes_no };

    Type type = Type::text;
    Field about{"", ""};
    QString title;      ///< a name in front of the label, where several things have the same line
    QString own_label;  ///< of a described controller: in place of the field's label
    QString own_range;  ///< and of the field's range
    const Unit* own_unit = nullptr;  ///< and of the reader's units: shown and typed in it, whatever these are
    bool fixed = false;              ///< only shown: it is said elsewhere
    bool spare = false;              ///< of the empty item at the end of a list: there to be filled in
    std::optional<Kind> kind;        ///< of a quantity
    std::vector<std::pair<QString, QString>> choices;      ///< value and words, of a choice
    std::function<QString()> entry;                        ///< as entered; empty: not entered
    std::function<std::optional<AnyQuantity>()> quantity;  ///< of a quantity
    std::function<Result<void>(const std::string&)> set;   ///< empty text: take the entry out
    std::function<QString()> beside;                       ///< what to compare it with; may be left out
    /// Where it was changed: the value that it has without an entry. May be left out.
    std::function<QString()> own;
};

/// A form for QML: lines with label, reason, value in the reader's units and the range. Owned by a view model
/// that outlives the record behind it; lives on the GUI thread.
class FormModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(int count READ count NOTIFY refreshed)
    Q_PROPERTY(QString summary READ summary NOTIFY refreshed)  ///< "4 of 9 entered"

public:
    enum Role {
        KeyRole = Qt::UserRole + 1,
        LabelRole,
        WhyRole,
        TypeRole,         ///< "quantity", "number", "text", "choice", "time", "yesno"
        NumberRole,       ///< shown number, words of a choice, or text; empty: not entered
        UnitRole,         ///< shown unit
        EntryRole,        ///< as entered
        RangeRole,        ///< "0.5 m to 200 m", or what is usual where everything is kept
        WarningRole,      ///< the entry lies outside what is usual and was kept; else empty
        MinusRole,        ///< a number below 0 may be typed
        TypedNumberRole,  ///< number of the entry, as entered
        TypedUnitRole,    ///< unit of the entry, or the usual one
        UnitsRole,        ///< units to type in, the usual one first
        ChoicesRole,      ///< list of {value, text}
        BesideRole,       ///< what to compare it with: "found 30 s, advised 85 s"
        OwnRole,          ///< value that it goes back to when the entry is taken out; empty: no such value
        FixedRole,        ///< bool: only shown, it is said elsewhere
    };

    FormModel(const Formatter& formatter, QObject* parent);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return static_cast<int>(fields_.size()); }

    [[nodiscard]] QString summary() const;

    void set_fields(std::vector<FormField> fields);
    /// The same, where the form is in sight: lines that were there stay the lines they are, others come and
    /// go.
    void change_fields(std::vector<FormField> fields);
    /// The records behind it, or the unit system, changed.
    void refresh();

    /// Takes a typed text; returns what is wrong with it, or an empty text once it is stored.
    Q_INVOKABLE QString enter(int row, const QString& text);

signals:
    void refreshed();
    void entered();

private:
    [[nodiscard]] QStringList units(const FormField& field) const;
    [[nodiscard]] QString shown(const FormField& field) const;
    [[nodiscard]] QString range(const FormField& field) const;
    [[nodiscard]] QString refused(const FormField& field, const QString& text, const Error& error) const;

    const Formatter& formatter_;
    std::vector<FormField> fields_;
};

}  // namespace wetfront::ui
