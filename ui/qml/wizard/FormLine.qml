// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.ViewModels

// One line of a form, in the shape that its type asks for.
ColumnLayout {
    id: line

    required property FormModel form
    required property NumberPad pad
    required property bool readOnly
    required property int index
    required property string key
    required property string label
    required property string why
    required property string type
    required property string number
    required property string unit
    required property string entry
    required property string typedNumber
    required property string typedUnit
    required property string range
    required property string warning
    required property bool minus
    required property var units
    required property var choices
    required property string beside
    required property string own
    required property bool fixed  // only shown: it is said elsewhere

    // It has a value without an entry too.
    property bool hasOwn: false
    property string problem

    spacing: 0

    function enter(text: string): string {
        return form.enter(index, text);
    }

    function askNumber(): void {
        pad.ask({
            label: label,
            text: type === "time" ? entry : typedNumber,
            unit: typedUnit,
            units: units,
            hint: why,
            rangeText: range,
            negative: minus,
            timeOfDay: type === "time",
            mayBeEmpty: !hasOwn,
            check: text => {
                line.problem = "";
                return line.enter(text);
            },
            accept: text => {
                if (text.length === 0)
                    line.problem = line.enter("");
            }
        });
    }

    Repeater {
        model: line.type === "quantity" || line.type === "number" || line.type === "time" ? 1 : 0
        delegate: FieldRow {
            label: line.label
            value: line.number.length > 0 && line.unit.length > 0 ? line.number + " " + line.unit : line.number
            placeholder: qsTr("not entered")
            hint: line.why.length > 0 && line.beside.length > 0 ? line.why + "\n" + line.beside : line.why + line.beside
            errorText: line.problem.length > 0 ? line.problem : line.warning
            readOnly: line.readOnly || line.fixed
            onClicked: line.askNumber()
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: line.own.length > 0 && !line.readOnly ? 1 : 0
        delegate: ActionButton {
            text: qsTr("Back to %1").arg(line.own)
            Accessible.name: Sentence.fill(qsTr("%1: back to %2"), [line.label, line.own])
            onClicked: line.problem = line.enter("")
            Layout.alignment: Qt.AlignRight
        }
    }
    Repeater {
        model: line.type === "text" ? 1 : 0
        delegate: TextFieldRow {
            enabled: !line.readOnly && !line.fixed
            label: line.label
            text: line.entry
            hint: line.why
            errorText: line.problem
            maximumLength: 100
            onEdited: text => line.problem = line.enter(text)
            Layout.fillWidth: true
        }
    }
    Repeater {
        model: line.type === "choice" || line.type === "yesno" ? 1 : 0
        delegate: ChoiceRow {
            enabled: !line.readOnly && !line.fixed
            label: line.fixed ? Sentence.fill(qsTr("%1 – %2"), [line.label, line.why]) : line.label
            model: line.choices
            current: line.entry
            onChosen: value => line.enter(value)
            Layout.fillWidth: true
        }
    }
}
