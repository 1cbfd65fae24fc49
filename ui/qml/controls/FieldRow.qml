// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// A measured or entered value with its unit. Pressing it asks the page to open the number pad.
TouchTarget {
    id: field

    required property string label
    property string value
    property string placeholder: qsTr("not measured")
    property string hint
    property string note
    property string errorText
    property bool readOnly: false

    readonly property bool wide: width >= Theme.fieldWidth * 1.7

    enabled: !readOnly
    text: label
    implicitWidth: Theme.fieldWidth
    Accessible.description: value.length > 0 ? value : placeholder

    horizontalPadding: 0
    verticalPadding: 0
    background: null
    contentItem: GridLayout {
        columns: field.wide ? 2 : 1
        columnSpacing: Theme.space
        rowSpacing: Theme.spaceSmall
        ColumnLayout {
            spacing: 0
            Layout.fillWidth: true
            PlainWords {
                text: field.label
                color: Theme.ink
                Accessible.ignored: true
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: field.hint
                color: Theme.inkSoft
                kind: "small"
                Accessible.ignored: true
                Layout.fillWidth: true
            }
        }
        Rectangle {
            Layout.preferredWidth: Theme.fieldWidth
            Layout.fillWidth: !field.wide
            implicitHeight: Theme.target
            radius: Theme.radius
            color: field.readOnly ? "transparent" : field.down ? Theme.waterTint : Theme.well
            border.width: field.readOnly ? 0 : field.errorText.length > 0 ? Theme.borderStrong : Theme.border
            border.color: field.errorText.length > 0 ? Theme.warning : Theme.line
            RowLayout {
                anchors.fill: parent
                anchors.leftMargin: Theme.gap
                anchors.rightMargin: Theme.gap
                spacing: Theme.gap
                PlainWords {
                    visible: text.length > 0
                    text: field.note
                    color: Theme.inkSoft
                    kind: "small"
                    Accessible.ignored: true
                    Layout.maximumWidth: parent.width / 2
                }
                PlainWords {
                    text: field.value.length > 0 ? field.value : field.placeholder
                    color: field.value.length > 0 ? Theme.ink : Theme.inkSoft
                    kind: field.value.length > 0 ? "number" : "body"
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: Theme.fontBody
                    wrapMode: Text.NoWrap
                    elide: Text.ElideRight
                    horizontalAlignment: Text.AlignRight
                    Accessible.ignored: true
                    Layout.fillWidth: true
                }
                Pictogram {
                    visible: !field.readOnly
                    name: "pencil"
                    size: Theme.pictogramSmall
                    colour: Theme.water
                }
            }
        }
        ErrorLine {
            text: field.errorText
            Layout.columnSpan: parent.columns
            Layout.fillWidth: true
        }
    }
}
