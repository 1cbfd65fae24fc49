// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls

// A choice with what is wrong with it: `problem` with the last press, `standing` with what is chosen.
ColumnLayout {
    id: choice

    required property string label
    required property var model
    required property var current
    property string problem
    property string standing

    signal chosen(var value)

    spacing: 0

    ChoiceRow {
        label: choice.label
        model: choice.model
        current: choice.current
        onChosen: value => choice.chosen(value)
        Layout.fillWidth: true
    }
    ErrorLine {
        text: choice.problem.length > 0 ? choice.problem : choice.standing
        Layout.fillWidth: true
    }
}
