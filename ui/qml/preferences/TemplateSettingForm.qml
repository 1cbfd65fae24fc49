// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// How one setting is entered on the controller: its label there, its unit, its steps and its range.
ColumnLayout {
    id: form

    required property TemplateViewModel described
    required property var line
    required property var about
    required property NumberPad pad

    spacing: Theme.gap

    function enter(field: string, text: string): string {
        return described.enterSetting(line.key, field, text);
    }

    component Value: FieldRow {
        id: value

        required property string field
        required property bool clock

        value: form.about[field].length > 0 && !clock ? form.about[field] + " " + form.about.unitText : form.about[field]
        placeholder: qsTr("not entered")
        errorText: form.about.problemField === field ? form.about.problem : ""
        onClicked: form.pad.ask({
            label: Sentence.fill(qsTr("%1: %2"), [form.line.name, label]),
            text: form.about[field],
            unit: clock ? "" : form.about.unitText,
            hint: hint,
            negative: form.line.negative && field !== "resolution",
            timeOfDay: clock,
            check: text => form.enter(field, text)
        })
        Layout.fillWidth: true
    }

    TextFieldRow {
        label: qsTr("Label")
        hint: qsTr("As the controller writes it.")
        text: form.about.label
        onEdited: text => errorText = form.enter("label", text)
        Layout.fillWidth: true
    }
    TemplateChoice {
        visible: form.line.units.length > 1
        label: qsTr("Unit")
        model: form.line.units
        current: form.about.unit
        onChosen: value => problem = form.enter("unit", value)
        Layout.fillWidth: true
    }
    Value {
        label: qsTr("Smallest step")
        field: "resolution"
        clock: false
    }
    Value {
        label: qsTr("Least")
        hint: qsTr("Steps count from it.")
        field: "least"
        clock: form.line.timeOfDay
    }
    Value {
        label: qsTr("Most")
        field: "most"
        clock: form.line.timeOfDay
    }
    TextFieldRow {
        label: qsTr("Note")
        text: form.about.note
        onEdited: text => errorText = form.enter("note", text)
        Layout.fillWidth: true
    }
}
