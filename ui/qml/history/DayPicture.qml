// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Charts
import Wetfront.Theme
import Wetfront.ViewModels

// The picture of a day, where there is one.
DayItem {
    required property DayViewModel day

    readonly property var made: day.picture

    visible: made["plans"] !== undefined
    implicitHeight: Theme.pictureHeight * 1.6
    picture: day.picture
    font.family: Theme.family
    font.pixelSize: Theme.fontSmall
    lineColor: Theme.ink
    faintColor: Theme.line
    groundColor: Theme.surface
    waterColor: Theme.water
    warmColor: Theme.warning
    stroke: Theme.borderStrong
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("the hottest day: air outside, behind the pads and in the house, wet share of the pads, pump runs")
    Accessible.description: day.sentence
}
